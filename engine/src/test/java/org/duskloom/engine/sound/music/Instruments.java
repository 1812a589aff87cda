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
