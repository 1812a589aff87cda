package org.duskloom.engine.sound.music;

import java.util.Random;

/** Plays single sounds into a mono song: full scale is 1, times are seconds. */
final class Instruments {
    static final int RATE = 22_050;

    private final double[] song;
    private final Random random;

    Instruments(double[] song, long seed) {
        this.song = song;
        this.random = new Random(seed);
    }

    void kick(double at, double loud) {
        double phase = 0;
        for (int i = 0, from = frame(at); i < RATE / 4; i++) {
            double t = (double) i / RATE;
            phase += (48 + 90 * StrictMath.exp(-t / 0.025)) / RATE;
            double click = 0.15 * noise() * StrictMath.exp(-t / 0.004);
            add(from + i, loud * (click + StrictMath.sin(2 * Math.PI * phase) * StrictMath.exp(-t / 0.08)));
        }
    }

    void snare(double at, double loud) {
        for (int i = 0, from = frame(at); i < RATE / 5; i++) {
            double t = (double) i / RATE;
            double tone = 0.5 * StrictMath.sin(2 * Math.PI * 185 * t) * StrictMath.exp(-t / 0.05);
            add(from + i, loud * (tone + 0.6 * noise() * StrictMath.exp(-t / 0.06)));
        }
    }

    void hat(double at, double loud, double decay) {
        double before = 0;
        for (int i = 0, from = frame(at); i < RATE * 4 * decay; i++) {
            double now = noise();
            add(from + i, loud * 0.5 * (now - before) * StrictMath.exp(-i / (decay * RATE)));
            before = now;
        }
    }

    /** A string that is plucked or struck: harmonics that fade the faster the higher. */
    void pluck(double at, double hz, double seconds, double loud) {
        int count = (int) (RATE * seconds);
        for (int h = 1; h <= 8 && h * hz < RATE / 2.2; h++) {
            for (int i = 0, from = frame(at); i < count; i++) {
                double t = (double) i / RATE;
                double level = StrictMath.exp(-t * (1.5 + h) / 0.9)
                        * Math.min(1, t / 0.004)
                        * Math.min(1, (seconds - t) / 0.02);
                add(from + i, loud / h * level * StrictMath.sin(2 * Math.PI * hz * h * t));
            }
        }
    }

    /** A voice that swells: bowed or sung. */
    void bow(double at, double hz, double seconds, double loud, double attack) {
        int count = (int) (RATE * seconds);
        for (int h = 1; h <= 6; h++) {
            for (int i = 0, from = frame(at); i < count; i++) {
                double t = (double) i / RATE;
                double level = Math.min(1, t / attack) * Math.min(1, (seconds - t) / 0.06);
                double wave = 0.006 * StrictMath.sin(2 * Math.PI * 5.3 * t);
                add(from + i, loud / (h * h) * level * StrictMath.sin(2 * Math.PI * hz * h * (t + wave / 30)));
            }
        }
    }

    /**
     * A drum: a tone that falls, and noise.
     *
     * @param hz where the tone ends
     * @param sweepHz by how much higher it begins
     * @param decay seconds in which it falls to a third
     * @param noise share of noise
     * @param noiseDecay seconds in which that falls to a third
     */
    record Drum(double hz, double sweepHz, double decay, double noise, double noiseDecay) {}

    void drum(double at, double loud, Drum drum) {
        double phase = 0;
        double level = 1;
        double hiss = 1;
        double sweep = drum.sweepHz;
        int count = (int) (RATE * 5 * Math.max(drum.decay, drum.noiseDecay));
        for (int i = 0, from = frame(at); i < count; i++) {
            phase += (drum.hz + sweep) / RATE;
            double tone = level * StrictMath.sin(2 * Math.PI * phase);
            add(from + i, loud * ((1 - drum.noise) * tone + drum.noise * hiss * noise()));
            level *= 1 - 1 / (drum.decay * RATE);
            hiss *= 1 - 1 / (drum.noiseDecay * RATE);
            sweep *= 1 - 1 / (0.025 * RATE);
        }
    }

    /**
     * How a string, a pipe or a key sounds.
     *
     * @param slope harmonic h has one over h to this power
     * @param fading how often it falls to a third in a second; harmonic h does so by h / 4 more often
     * @param attack seconds in which it swells
     * @param tremble by what share its loudness goes up and down, six times a second
     */
    record Tone(int harmonics, double slope, double fading, double attack, double tremble) {}

    void tone(double at, double hz, double seconds, double loud, Tone tone) {
        int count = (int) (RATE * seconds);
        for (int h = 1; h <= tone.harmonics && h * hz < RATE / 2.2; h++) {
            double turn = 2 * Math.PI * hz * h / RATE;
            double twice = 2 * StrictMath.cos(turn);
            double before = -StrictMath.sin(turn);
            double now = 0;
            double fade = 1 - tone.fading * (1 + h / 4.0) / RATE;
            double level = loud / StrictMath.pow(h, tone.slope);
            for (int i = 0, from = frame(at); i < count; i++) {
                double t = (double) i / RATE;
                double ends = Math.min(1, t / tone.attack) * Math.min(1, (seconds - t) / 0.02);
                double trembling = tone.tremble == 0 ? 1 : 1 + tone.tremble * StrictMath.sin(2 * Math.PI * 6 * t);
                add(from + i, level * now * ends * trembling);
                double next = twice * now - before;
                before = now;
                now = next;
                level *= fade;
            }
        }
    }

    /** A room: what is heard comes back softer, again and again. */
    void echo(double seconds, double share) {
        int delay = frame(seconds);
        for (int i = delay; i < song.length; i++) {
            song[i] += share * song[i - delay];
        }
    }

    void noiseUnder(double decibels) {
        double power = 0;
        for (double sample : song) {
            power += sample * sample;
        }
        double deviation = Math.sqrt(power / song.length * StrictMath.pow(10, -decibels / 10));
        for (int i = 0; i < song.length; i++) {
            song[i] += deviation * random.nextGaussian();
        }
    }

    static double hertz(int midiNote) {
        return 440 * StrictMath.pow(2, (midiNote - 69) / 12.0);
    }

    private double noise() {
        return 2 * random.nextDouble() - 1;
    }

    private static int frame(double at) {
        return (int) Math.round(at * RATE);
    }

    private void add(int frame, double value) {
        if (frame >= 0 && frame < song.length) {
            song[frame] += value;
        }
    }
}
