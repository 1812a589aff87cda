package org.duskloom.engine.survey;

import java.util.List;

/** Measurements of one prop that were mixed up when they were written down, and were left out. */
public sealed interface Muddle {
    /** The pixels, from 0 within their prop, rising. */
    List<Integer> pixels();

    /**
     * Two pixels of which each was measured where the other one hangs.
     *
     * @param pixels the two
     */
    record Exchanged(List<Integer> pixels) implements Muddle {
        public Exchanged {
            pixels = List.copyOf(pixels);
        }
    }

    /**
     * Pixels that were all measured at exactly one place, as when a cell is filled down.
     *
     * @param pixels which ones
     * @param x where on the stage
     * @param y the same, up
     * @param z the same, toward the audience; 0 where depth was not measured
     * @param extent how far apart they are described, in the display's unit
     */
    record OnePlace(List<Integer> pixels, double x, double y, double z, double extent) implements Muddle {
        public OnePlace {
            pixels = List.copyOf(pixels);
        }
    }
}
