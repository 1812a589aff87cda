package org.duskloom.engine.sound;

/**
 * A second-order section of a digital filter, y = b0 x + b1 x1 + b2 x2 - a1 y1 - a2 y2, as a recipe without state.
 * Designs by the bilinear transform, with the corner where it was asked for.
 */
record Biquad(double b0, double b1, double b2, double a1, double a2) {
    /** What is left of a sound long gone: set to zero, since the smallest numbers take a processor very long. */
    private static final double NOTHING = 1e-30;

    /** Quality of the sections of a Butterworth filter of fourth order: half the inverse cosines of pi/8 and 3 pi/8. */
    private static final double[] BUTTERWORTH = {0.541196100146197, 1.306562964876377};

    /** Passes what is lower; falls by 24 dB an octave. */
    static Biquad[] lowPass(double cornerHz, double rateHz) {
        return cascade(cornerHz, rateHz, true);
    }

    /** Passes what is higher; falls by 24 dB an octave. */
    static Biquad[] highPass(double cornerHz, double rateHz) {
        return cascade(cornerHz, rateHz, false);
    }

    private static Biquad[] cascade(double cornerHz, double rateHz, boolean low) {
        double k = StrictMath.tan(Math.PI * cornerHz / rateHz);
        Biquad[] sections = new Biquad[BUTTERWORTH.length];
        for (int i = 0; i < sections.length; i++) {
            double scale = 1 + k / BUTTERWORTH[i] + k * k;
            double b0 = (low ? k * k : 1) / scale;
            sections[i] = new Biquad(
                    b0, low ? 2 * b0 : -2 * b0, b0, 2 * (k * k - 1) / scale, (1 - k / BUTTERWORTH[i] + k * k) / scale);
        }
        return sections;
    }

    /** Its gain at a frequency, as a factor. */
    double gainAt(double hz, double rateHz) {
        double w = 2 * Math.PI * hz / rateHz;
        return magnitude(b0, b1, b2, w) / magnitude(1, a1, a2, w);
    }

    private static double magnitude(double c0, double c1, double c2, double w) {
        double real = c0 + c1 * StrictMath.cos(w) + c2 * StrictMath.cos(2 * w);
        double imaginary = c1 * StrictMath.sin(w) + c2 * StrictMath.sin(2 * w);
        return Math.sqrt(real * real + imaginary * imaginary);
    }

    /** Two sections one behind the other, in motion over one channel. Transposed direct form II. */
    static final class Pair {
        private final Biquad first;
        private final Biquad second;
        private double first1;
        private double first2;
        private double second1;
        private double second2;

        Pair(Biquad[] sections) {
            this.first = sections[0];
            this.second = sections[1];
        }

        /** Filters samples; the two arrays may be one. */
        void run(double[] from, double[] into, int count) {
            double b0 = first.b0;
            double b1 = first.b1;
            double b2 = first.b2;
            double a1 = first.a1;
            double a2 = first.a2;
            double c0 = second.b0;
            double c1 = second.b1;
            double c2 = second.b2;
            double d1 = second.a1;
            double d2 = second.a2;
            double s1 = first1;
            double s2 = first2;
            double t1 = second1;
            double t2 = second2;
            for (int i = 0; i < count; i++) {
                double x = from[i];
                double y = b0 * x + s1;
                s1 = b1 * x - a1 * y + s2;
                s2 = b2 * x - a2 * y;
                double z = c0 * y + t1;
                t1 = c1 * y - d1 * z + t2;
                t2 = c2 * y - d2 * z;
                into[i] = z;
            }
            first1 = rested(s1);
            first2 = rested(s2);
            second1 = rested(t1);
            second2 = rested(t2);
        }

        private static double rested(double state) {
            return Math.abs(state) < NOTHING ? 0 : state;
        }
    }
}
