package org.duskloom.engine.wire;

import org.duskloom.engine.color.Srgb;

/**
 * What a port sends for an amount of light. Amounts of light and what is sent for them are shares of the most, 0 to 1.
 */
public sealed interface Curve {
    /** The share that is sent for an amount of linear light. */
    double sent(double light);

    /** Whether what is sent means the time for which a light is on, so that it may be dithered. */
    default boolean meansDuty() {
        return true;
    }

    /** The light itself: a light that is on for half of the time gives half of its light. */
    record Linear() implements Curve {
        @Override
        public double sent(double light) {
            return light;
        }
    }

    /** The sRGB code, for receivers that bend it themselves. */
    record Codes() implements Curve {
        @Override
        public double sent(double light) {
            return Srgb.encode(light);
        }

        @Override
        public boolean meansDuty() {
            return false;
        }
    }

    /**
     * The sRGB code to a power, for lights that are to look as those of a display with that gamma.
     *
     * @param exponent the power, {@value #LEAST} to {@value #MOST}
     */
    record Gamma(double exponent) implements Curve {
        /** The smallest power; what it gives is that of {@link Codes}, but dithered. */
        public static final double LEAST = 1;

        /** The largest power. */
        public static final double MOST = 4;

        /**
         * @throws IllegalArgumentException if the power is out of range
         */
        public Gamma {
            if (!(exponent >= LEAST && exponent <= MOST)) {
                throw new IllegalArgumentException("gamma " + exponent);
            }
        }

        @Override
        public double sent(double light) {
            return StrictMath.pow(Srgb.encode(light), exponent);
        }
    }
}
