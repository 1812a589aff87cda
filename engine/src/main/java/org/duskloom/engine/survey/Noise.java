package org.duskloom.engine.survey;

import java.util.Objects;

/**
 * How well was measured.
 *
 * @param sigma the standard deviation of one measured coordinate that readings are judged by, in the display's unit:
 *     above 0
 * @param source where it comes from
 * @param spareCoordinates how many measured coordinates there are beyond those that placements use up; 0 if a
 *     tolerance was given
 */
public record Noise(double sigma, Source source, int spareCoordinates) {
    /** Where the figure comes from. */
    public enum Source {
        /** From what is left over when every prop is given the place that fits best. */
        MEASURED,
        /** A pixel of the picture, or the 3 mm that anybody hangs lights by, because places scatter by less. */
        FLOOR,
        /** A third of the tolerance that was asked for. */
        TOLERANCE,
        /**
         * 5 mm, or less in a very small display, because too little was measured to tell, and nothing speaks against
         * it.
         */
        ASSUMED,
        /** The same, because what every placement leaves over is more than anybody measures wrongly. */
        IMPLAUSIBLE
    }

    public Noise {
        Objects.requireNonNull(source, "source");
    }
}
