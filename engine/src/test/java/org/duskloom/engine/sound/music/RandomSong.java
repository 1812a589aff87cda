package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.duskloom.engine.sound.SoundFormat;

/**
 * A song that a seed makes whole: its tempo from 60 to 180 beats a minute, its notes, its instruments, and what makes
 * it hard: people's hands, noise, a change of tempo, silent bars, a late start.
 */
final class RandomSong {
    private static final double SLOWEST = 60;
    private static final double FASTEST = 180;

    final long seed;
    final double tempo;
    final List<Double> beats = new ArrayList<>();
    final RandomScore score;
    final String kind;
    final double[] samples;

    private final Random dice;
    private final double leadIn;
    private final double seconds;

    RandomSong(long seed) {
        this.seed = seed;
        this.dice = new Random(seed * 0x9E3779B97F4A7C15L);
        this.tempo = SLOWEST + (FASTEST - SLOWEST) * dice.nextDouble();
        this.seconds = 28 + 12 * dice.nextDouble();
        this.leadIn = maybe(0.12) ? 2 + 5 * dice.nextDouble() : 0.8 * dice.nextDouble();
        double speedUp = maybe(0.12) ? 1.15 : maybe(0.04) ? 1 / 1.15 : 1;
        while (leadIn + next(speedUp) < seconds - 1) {
            beats.add(leadIn + next(speedUp));
        }
        this.score = RandomScore.of(tempo, beats.size(), dice);
        boolean gap = maybe(0.12);
        int silentFrom = beats.size() / score.barBeats / 2 * score.barBeats;
        int silentTo = gap ? silentFrom + 4 * score.barBeats : silentFrom;
        double jitter = maybe(0.25) ? 0.01 : 0;
        boolean noisy = maybe(0.15);
        this.samples = new double[(int) (Instruments.RATE * seconds)];
        Instruments play = new Instruments(samples, dice.nextLong());
        RandomBand band = new RandomBand(play, dice);
        for (RandomScore.Note note : score.notes) {
            if (note.beat() < silentFrom || note.beat() >= silentTo) {
                double at = at(note.beat());
                band.play(note, at + jitter * dice.nextGaussian(), at(note.beat() + note.beats()) - at);
            }
        }
        if (maybe(0.3)) {
            play.echo(0.03 + 0.08 * dice.nextDouble(), 0.2 + 0.4 * dice.nextDouble());
        }
        if (noisy) {
            play.noiseUnder(10);
        }
        double peak = 1e-9;
        for (double sample : samples) {
            peak = Math.max(peak, Math.abs(sample));
        }
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= 0.8 / peak;
        }
        this.kind = (score.barBeats == 3 ? "three" : score.swung ? "swung" : "straight")
                + (speedUp > 1 ? ", faster" : speedUp < 1 ? ", slower" : "")
                + (gap ? ", gap" : "")
                + (jitter > 0 ? ", by hand" : "")
                + (noisy ? ", noise" : "")
                + (leadIn >= 2 ? ", late" : "");
    }

    /** How long after the first beat the next one is. */
    private double next(double speedUp) {
        if (beats.isEmpty()) {
            return 0;
        }
        double last = beats.get(beats.size() - 1) - leadIn;
        return last + 60 / tempo / (1 + (speedUp - 1) * last / (seconds - leadIn));
    }

    private double at(double beat) {
        int before = Math.min((int) beat, beats.size() - 2);
        return beats.get(before) + (beat - before) * (beats.get(before + 1) - beats.get(before));
    }

    SoundFormat format() {
        return new SoundFormat("WAV", 1, Instruments.RATE, "", 0, OptionalLong.of(samples.length));
    }

    private boolean maybe(double chance) {
        return dice.nextDouble() < chance;
    }
}
