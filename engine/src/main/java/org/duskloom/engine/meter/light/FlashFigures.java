package org.duskloom.engine.meter.light;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How often light and red flash within a second.
 *
 * @param seenFromMetres from how far the display is seen; nothing where nobody says
 * @param general of the whole display
 * @param red of the whole display
 * @param props of each prop, in wiring order
 */
public record FlashFigures(OptionalDouble seenFromMetres, FlashCount general, FlashCount red, List<PropFlashes> props) {
    private static final double ROUNDING = 1e-9;

    public FlashFigures {
        Objects.requireNonNull(general, "general");
        Objects.requireNonNull(red, "red");
        props = List.copyOf(props);
    }

    /** Of one prop. */
    public record PropFlashes(String prop, FlashCount general, FlashCount red) {
        /**
         * How many of its pixels have more changes than are allowed at the same time, by the rule with more of them.
         */
        public int pixelsOver() {
            return Math.max(general.pixelsOver(), red.pixelsOver());
        }

        /** Whether neither light nor red changes too often anywhere. Passing is no guarantee. */
        public boolean passesEverywhere() {
            return general.passesEverywhere() && red.passesEverywhere();
        }
    }

    /**
     * Whether a count passes: where nobody says from how far it is seen, nothing may flash more than three times in any
     * second; else what does may fill what is allowed in a field of ten degrees.
     */
    public boolean passes(FlashCount count) {
        return count.passesEverywhere() || seenFromMetres.isPresent() && count.fieldShare() <= 1 + ROUNDING;
    }

    /** Whether light and red pass. Passing is no guarantee. */
    public boolean passes() {
        return passes(general) && passes(red);
    }

    /** The count that is told first: one that does not pass, else the one with more changes. */
    public FlashCount worst() {
        if (passes(general) != passes(red)) {
            return passes(general) ? red : general;
        }
        return red.most() > general.most() ? red : general;
    }
}
