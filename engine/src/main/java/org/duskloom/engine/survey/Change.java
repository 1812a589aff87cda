package org.duskloom.engine.survey;

import java.util.Objects;
import org.duskloom.engine.display.Mirror;

/** One thing that differs from what is described. Lengths in the display's unit, errors are standard deviations. */
public sealed interface Change {
    /**
     * The zero point of the shape is elsewhere.
     *
     * @param dx how far to the right
     * @param dy how far up
     * @param dz how far toward the audience; 0 where depth was not measured
     * @param error in each coordinate
     */
    record Moved(double dx, double dy, double dz, double error) implements Change {}

    /**
     * It hangs where another prop is described.
     *
     * @param prop the other prop's name
     * @param takesTurn whether it is turned as that one is described too, which is not how it is described itself
     */
    record TookThePlace(String prop, boolean takesTurn) implements Change {
        public TookThePlace {
            Objects.requireNonNull(prop, "prop");
        }
    }

    /**
     * It is turned, about the zero point of the shape.
     *
     * @param degrees counter-clockwise as the audience sees it, above -180 up to 180
     * @param isQuarter whether it is one, two or three quarters of a turn exactly
     * @param errorDegrees of the angle; 0 for quarters
     */
    record Turned(double degrees, boolean isQuarter, double errorDegrees) implements Change {}

    /**
     * It is turned in any way.
     *
     * @param degrees how far, about whatever axis
     */
    record TurnedInSpace(double degrees) implements Change {}

    /**
     * It is mirrored, or not mirrored, or in another way.
     *
     * @param now how it is mirrored in truth
     */
    record Mirrored(Mirror now) implements Change {
        public Mirrored {
            Objects.requireNonNull(now, "now");
        }
    }

    /**
     * It is larger or smaller.
     *
     * @param factor the true size by the described one
     * @param error of the factor
     */
    record Resized(double factor, double error) implements Change {}

    /**
     * Its pixels are wired in another order.
     *
     * @param wiring which one
     */
    record Rewired(Wiring wiring) implements Change {
        public Rewired {
            Objects.requireNonNull(wiring, "wiring");
        }
    }

    /**
     * It moved together with other props.
     *
     * @param motion which motion of the survey, from 0
     */
    record MovedTogether(int motion) implements Change {}
}
