package org.duskloom.engine.meter.light;

import java.util.Objects;

/**
 * The second with the most opposing changes by one rule, of the whole display or of one prop. Two changes are a flash.
 *
 * @param rule what counts
 * @param most how many changes it has
 * @param place what flashes so
 * @param firstFrame the frame that the second begins with, by its number in the show; one that runs over the joint of
 *     a loop ends beyond the last
 * @param overJoint whether it is one only because the show starts over at once when it ends
 * @param mostOnce the most changes of a second where the show is played once
 * @param pixelsOver how many pixels have more than six changes in seconds that overlap, at the most; with a prop as a
 *     whole all of its pixels count
 * @param fieldShare how much of what is allowed in a field of ten degrees these fill; 0 where nobody says from how far
 *     the display is seen
 */
public record FlashCount(
        FlashRule rule,
        int most,
        FlashPlace place,
        long firstFrame,
        boolean overJoint,
        int mostOnce,
        int pixelsOver,
        double fieldShare) {
    /** Six opposing changes are three flashes; seven are more (WCAG 2.2, technique G19). */
    public static final int ALLOWED = 6;

    public FlashCount {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(place, "place");
    }

    /** Whether no pixel and no prop as a whole flashes more than three times in any second, also over the joint. */
    public boolean passesEverywhere() {
        return most <= ALLOWED;
    }

    /** By what factor what flashes is to be slowed to have six changes in the second. */
    public double slowBy() {
        return (double) most / ALLOWED;
    }
}
