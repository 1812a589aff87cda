package org.duskloom.cli;

/**
 * A palette of opaque colours by the page of meanings, section "Colours": mixed in linear light, or in steps.
 *
 * @param codes 0xRRGGBB of each stop, spread evenly
 */
record RecomputedPalette(boolean step, int... codes) {

    /** Linear red, green and blue at a place. */
    double[] at(double place) {
        int last = codes.length - 1;
        if (step || last == 0) {
            return light((int) Math.min(last, Math.max(0, Math.floor(place * codes.length))));
        }
        double within = Math.min(1, Math.max(0, place)) * last;
        int below = (int) Math.min(last - 1, Math.floor(within));
        double[] low = light(below);
        double[] high = light(below + 1);
        double share = within - below;
        double[] mixed = new double[3];
        for (int channel = 0; channel < 3; channel++) {
            mixed[channel] = low[channel] * (1 - share) + high[channel] * share;
        }
        return mixed;
    }

    /** The colour of a stop. */
    double[] light(int stop) {
        return new double[] {decode(codes[stop] >> 16 & 255), decode(codes[stop] >> 8 & 255), decode(codes[stop] & 255)
        };
    }

    /** IEC 61966-2-1. */
    static double decode(int code) {
        double encoded = code / 255.0;
        return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
    }

    /** IEC 61966-2-1, to the nearest code. */
    static int code(double light) {
        double clipped = Math.min(1, Math.max(0, light));
        double encoded = clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * Math.pow(clipped, 1 / 2.4) - 0.055;
        return (int) Math.floor(255 * encoded + 0.5);
    }
}
