package org.duskloom.engine.meter;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The voltages along the line of a port over a run.
 *
 * @param sourceVolts what its supply gives
 * @param leastByPixel the least that each pixel of the line had, in its order; below 0 where the wire cannot carry it
 * @param leastFrameByPixel the first frame in which each of them had that, by its number in the show
 * @param leastPixel the pixel with the least of all, from 0 in the chain; the first of several
 * @param promised with less a pixel is not promised to work; nothing where that is not known
 * @param leads what flows through each feed, in the order of the display
 */
public record VoltFigures(
        double sourceVolts,
        double[] leastByPixel,
        long[] leastFrameByPixel,
        int leastPixel,
        OptionalDouble promised,
        List<LeadFigures> leads) {
    public VoltFigures {
        leads = List.copyOf(leads);
    }

    /** The least of all. */
    public double least() {
        return leastByPixel[leastPixel];
    }

    /**
     * The least of all as it is shown, in hundredths: the nearest, unless that reaches what is promised, as that is
     * shown, and the voltage does not. Then it is the next below, so that what is called too low never reads as if it
     * were enough.
     */
    public double leastInHundredths() {
        if (least() < 0) {
            return least();
        }
        long nearest = Math.round(least() * 100);
        long most = isTooLow(leastPixel) ? Math.round(promised.getAsDouble() * 100) - 1 : nearest;
        return Math.min(nearest, most) / 100.0;
    }

    /** When that was: the first frame, by its number in the show. */
    public long leastFrame() {
        return leastFrameByPixel[leastPixel];
    }

    /** Whether a pixel, from 0 in the chain, had less than it is promised to work with. */
    public boolean isTooLow(int pixel) {
        return promised.isPresent() && leastByPixel[pixel] < promised.getAsDouble();
    }

    /** How many pixels had less than they are promised to work with. */
    public int tooLowCount() {
        int count = 0;
        for (int i = 0; i < leastByPixel.length; i++) {
            count += isTooLow(i) ? 1 : 0;
        }
        return count;
    }
}
