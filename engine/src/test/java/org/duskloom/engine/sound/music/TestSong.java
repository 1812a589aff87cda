package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.duskloom.engine.sound.SoundFormat;

/** Songs made from known beats. */
final class TestSong {
    /** What is played. */
    enum Style {
        FOUR_ON_THE_FLOOR,
        ROCK,
        HALF_ROCK,
        WALTZ,
        PIANO,
        SWING,
        BROKEN,
        SYNCOPATED,
        MELODY,
        STRINGS,
        PLUCKED_WALTZ,
        BASS_AND_HAT
    }

    final Style style;
    final double tempo;
    final int barBeats;
    final List<Double> beats = new ArrayList<>();
    double[] samples;

    private final Random random;
    private double speedUp = 1;
    private double jitter;
    private int silentFrom = Integer.MAX_VALUE;
    private int silentTo;
    private double leadIn = 0.3;
    private double noiseDecibels = Double.NaN;
    private double seconds = 40;

    TestSong(Style style, double tempo, long seed) {
        this.style = style;
        this.tempo = tempo;
        this.barBeats = style == Style.WALTZ || style == Style.PLUCKED_WALTZ ? 3 : 4;
        this.random = new Random(seed);
    }

    /** The last beat is by so much faster than the first. */
    TestSong speedingUp(double factor) {
        speedUp = factor;
        return this;
    }

    /** Every sound is a little early or late, by that standard deviation in seconds. */
    TestSong played(double deviation) {
        jitter = deviation;
        return this;
    }

    /** Four bars of silence in the middle. */
    TestSong withGap() {
        silentFrom = (int) (seconds * tempo / 60 / barBeats / 2) * barBeats;
        silentTo = silentFrom + 4 * barBeats;
        return this;
    }

    TestSong after(double leadInSeconds) {
        leadIn = leadInSeconds;
        return this;
    }

    TestSong inNoise(double decibels) {
        noiseDecibels = decibels;
        return this;
    }

    TestSong lasting(double lengthSeconds) {
        seconds = lengthSeconds;
        return this;
    }

    TestSong make() {
        samples = new double[(int) (Instruments.RATE * seconds)];
        Instruments play = new Instruments(samples, random.nextLong());
        double t = leadIn;
        int beat = 0;
        int root = 45 + random.nextInt(8);
        int[] chords = {0, 5, 7, 0, 9, 5, 2, 7};
        while (t < seconds - 1) {
            double done = (t - leadIn) / (seconds - leadIn);
            double step = 60 / tempo / (1 + (speedUp - 1) * done);
            beats.add(t);
            if (beat < silentFrom || beat >= silentTo) {
                int bar = beat / barBeats;
                play(play, t, step, beat % barBeats, bar, root + chords[bar % chords.length]);
            }
            t += step;
            beat++;
        }
        if (!Double.isNaN(noiseDecibels)) {
            play.noiseUnder(noiseDecibels);
        }
        double peak = 0;
        for (double sample : samples) {
            peak = Math.max(peak, Math.abs(sample));
        }
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= 0.8 / peak;
        }
        return this;
    }

    private double about(double t) {
        return t + jitter * random.nextGaussian();
    }

    private boolean maybe(double chance) {
        return random.nextDouble() < chance;
    }

    private void chord(Instruments play, double at, int root, double seconds, double loud) {
        for (int note : new int[] {12, 16, 19}) {
            play.pluck(about(at), Instruments.hertz(root + note), seconds, loud);
        }
    }

    private void play(Instruments play, double t, double step, int inBar, int bar, int root) {
        double bass = Instruments.hertz(root - 12);
        switch (style) {
            case FOUR_ON_THE_FLOOR -> {
                play.kick(about(t), 1);
                play.hat(about(t + step / 2), 0.5, 0.04);
                if (inBar % 2 == 1) {
                    play.snare(about(t), 0.5);
                }
                play.pluck(about(t + step / 2), bass, step / 2, 0.4);
                if (inBar == 0) {
                    chord(play, t, root, step * 3, 0.15);
                }
            }
            case ROCK -> {
                if (inBar % 2 == 0) {
                    play.kick(about(t), 1);
                } else {
                    play.snare(about(t), 0.9);
                }
                if (inBar == 2 && maybe(0.5)) {
                    play.kick(about(t + step / 2), 0.8);
                }
                play.hat(about(t), 0.4, 0.03);
                play.hat(about(t + step / 2), 0.3, 0.03);
                play.pluck(about(t), bass, step, 0.4);
                if (inBar == 0 || inBar == 2) {
                    chord(play, t, root, step * 2, 0.15);
                }
            }
            case HALF_ROCK -> {
                if (inBar == 0) {
                    play.kick(about(t), 1);
                }
                if (inBar == 1 && maybe(0.4)) {
                    play.kick(about(t + step / 2), 0.8);
                }
                if (inBar == 2) {
                    play.snare(about(t), 0.9);
                }
                play.hat(about(t), 0.4, 0.03);
                play.pluck(about(t), bass, step, 0.3);
                chord(play, t, root, step, 0.12);
            }
            case WALTZ -> {
                if (inBar == 0) {
                    play.kick(about(t), 0.8);
                    play.pluck(about(t), bass, step, 0.6);
                } else {
                    chord(play, t, root, step * 0.7, 0.25);
                    play.hat(about(t), 0.2, 0.02);
                }
            }
            case PLUCKED_WALTZ -> {
                play.pluck(
                        about(t), inBar == 0 ? bass * 2 : Instruments.hertz(root + (inBar == 1 ? 12 : 16)), step, 0.5);
                if (inBar == 0) {
                    play.pluck(about(t), Instruments.hertz(root + 24), step * 2, 0.3);
                } else if (maybe(0.4)) {
                    play.pluck(about(t + step / 2), Instruments.hertz(root + 19), step, 0.25);
                }
            }
            case PIANO -> {
                int[] broken = {0, 7, 12, 16, 19, 16, 12, 7};
                play.pluck(about(t), Instruments.hertz(root + broken[inBar * 2 % 8]), step, inBar == 0 ? 0.6 : 0.4);
                play.pluck(about(t + step / 2), Instruments.hertz(root + broken[(inBar * 2 + 1) % 8]), step, 0.25);
                if (inBar % 2 == 0) {
                    play.pluck(about(t), Instruments.hertz(root + 24 + 2 * random.nextInt(4)), step * 2, 0.4);
                }
            }
            case SWING -> {
                play.hat(about(t), 0.5, 0.08);
                if (inBar % 2 == 1) {
                    play.hat(about(t + step * 2 / 3), 0.35, 0.06);
                    play.hat(about(t), 0.3, 0.02);
                }
                play.pluck(about(t), bass * Math.pow(2, new int[] {0, 4, 7, 9}[inBar] / 12.0), step, 0.6);
                if (maybe(0.3)) {
                    chord(play, t + step * 2 / 3, root, step / 2, 0.15);
                }
            }
            case BROKEN -> {
                if (inBar == 0) {
                    play.kick(about(t), 1);
                }
                if (inBar == 2) {
                    play.kick(about(t + step / 2), 0.9);
                }
                if (inBar % 2 == 1) {
                    play.snare(about(t), 0.9);
                }
                play.hat(about(t), 0.3, 0.02);
                play.hat(about(t + step / 2), 0.25, 0.02);
                if (inBar == 0) {
                    play.bow(t, bass, step * 3.5, 0.3, 0.02);
                }
            }
            case SYNCOPATED -> {
                if (inBar == 0) {
                    play.kick(about(t), 1);
                }
                if (inBar == 1) {
                    play.kick(about(t + step / 2), 0.8);
                }
                if (inBar % 2 == 1) {
                    play.snare(about(t), 0.7);
                }
                for (int i = 0; i < 4; i++) {
                    play.hat(about(t + i * step / 4), i == 0 ? 0.35 : i == 2 ? 0.3 : 0.15, 0.02);
                }
                if (inBar == 0) {
                    chord(play, t, root, step * 1.5, 0.2);
                    chord(play, t + step * 1.5, root, step, 0.2);
                } else if (inBar == 3) {
                    chord(play, t + step / 2, root, step / 2, 0.2);
                    play.pluck(about(t), bass, step / 2, 0.4);
                }
            }
            case MELODY -> {
                int[] scale = {0, 2, 4, 7, 9, 12};
                double length = maybe(0.25) && inBar < 3 ? 2 : 1;
                if (length == 1 && maybe(0.35)) {
                    play.pluck(
                            about(t + step / 2),
                            Instruments.hertz(root + 24 + scale[random.nextInt(6)]),
                            step / 2,
                            0.4);
                }
                play.pluck(about(t), Instruments.hertz(root + 24 + scale[random.nextInt(6)]), step * length, 0.6);
                if (inBar == 0) {
                    play.pluck(about(t), Instruments.hertz(root), step * 4, 0.4);
                }
            }
            case STRINGS -> {
                if (inBar % 2 == 0) {
                    for (int note : new int[] {0, 12, 16, 19}) {
                        play.bow(about(t - 0.03), Instruments.hertz(root + note), step * 2, 0.3, 0.08);
                    }
                }
                play.bow(
                        about(t - 0.02), Instruments.hertz(root + 24 + new int[] {0, 4, 7, 4}[inBar]), step, 0.3, 0.05);
            }
            case BASS_AND_HAT -> {
                play.pluck(about(t), bass, step * 0.8, 0.7);
                if (maybe(0.4)) {
                    play.pluck(about(t + step / 2), bass * 1.5, step * 0.4, 0.5);
                }
                if (inBar % 2 == 1) {
                    play.hat(about(t), 0.4, 0.05);
                }
            }
        }
    }

    SoundFormat format() {
        return new SoundFormat("WAV", 1, Instruments.RATE, "", 0, OptionalLong.of(samples.length));
    }
}
