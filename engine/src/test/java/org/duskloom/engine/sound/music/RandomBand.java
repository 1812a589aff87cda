package org.duskloom.engine.sound.music;

import java.util.Random;

/** Instruments that dice have chosen, one for each part. */
final class RandomBand {
    private final Instruments play;
    private final double[] loud = new double[RandomScore.Part.values().length];
    private final double kickHz;
    private final double kickDecay;
    private final double snareHz;
    private final double snareDecay;
    private final double snareNoise;
    private final double hatDecay;
    private final Instruments.Tone[] voices = new Instruments.Tone[loud.length];

    RandomBand(Instruments play, Random dice) {
        this.play = play;
        double[] usual = {1, 0.8, 0.35, 0.5, 0.17, 0.3};
        for (int i = 0; i < loud.length; i++) {
            loud[i] = usual[i] * Math.exp(0.3 * dice.nextGaussian());
            voices[i] = voice(dice, i == RandomScore.Part.TUNE.ordinal());
        }
        this.kickHz = 42 + 25 * dice.nextDouble();
        this.kickDecay = 0.05 + 0.12 * dice.nextDouble();
        this.snareHz = 150 + 100 * dice.nextDouble();
        this.snareDecay = 0.04 + 0.08 * dice.nextDouble();
        this.snareNoise = 0.35 + 0.5 * dice.nextDouble();
        this.hatDecay = 0.015 + 0.06 * dice.nextDouble();
    }

    /** Strings, pipes or keys; a tune may be bowed. */
    private static Instruments.Tone voice(Random dice, boolean mayBeBowed) {
        boolean holds = dice.nextDouble() < 0.3;
        return new Instruments.Tone(
                2 + dice.nextInt(8),
                0.7 + dice.nextDouble(),
                holds ? 0.3 : 1 + 5 * dice.nextDouble(),
                mayBeBowed && dice.nextDouble() < 0.25 ? 0.05 : 0.003 + 0.012 * dice.nextDouble(),
                holds && dice.nextDouble() < 0.5 ? 0.4 * dice.nextDouble() : 0);
    }

    void play(RandomScore.Note note, double at, double seconds) {
        int part = note.part().ordinal();
        double size = loud[part] * note.loud();
        switch (note.part()) {
            case KICK -> play.drum(at, size, new Instruments.Drum(kickHz, 2 * kickHz, kickDecay, 0.1, 0.004));
            case SNARE -> play.drum(at, size, new Instruments.Drum(snareHz, 20, 0.05, snareNoise, snareDecay));
            case HAT -> play.hat(at, size, hatDecay);
            case BASS, CHORD, TUNE -> play.tone(at, Instruments.hertz(note.pitch()), seconds, size, voices[part]);
        }
    }
}
