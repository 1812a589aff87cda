package org.duskloom.engine.meter.light;

import java.util.function.Supplier;

/**
 * Counts the opposing changes of every pixel, of every prop and of the whole display, by all rules. A pixel alone is
 * the strictest measure of parts that flash: a mean would hide lights that take turns. Means are the measure of parts
 * of which each flashes seldom and all of them together often. Both count, the worse of them is told.
 */
final class FlashCounter {
    private final SignalLayout layout;
    private final LuminanceSwings luminance;
    private final RedSwings reds;
    private final RecentSwings general;
    private final RecentSwings olderRed;
    private final RecentSwings chromaticRed;
    private final RecentSwings possibleRed;
    private final RecentSwings redInTurn;
    private final RedLimits redLimits;
    private final FlashTally generalTally;
    private final FlashTally redTally;

    /** Of each signal: how many changes of luminance it has had so far. */
    private final int[] lightChanges;

    /** Where a second of luminance ended last that has as many changes as are allowed, and might have one more. */
    private int lastLightLimit = -1;

    private boolean isJoint;

    FlashCounter(SignalLayout layout, PastColors past, int framesOfSecond, Supplier<FlashField> field) {
        this.layout = layout;
        int signals = layout.signalCount();
        luminance = new LuminanceSwings(signals);
        reds = new RedSwings(signals, past);
        general = new RecentSwings(signals, framesOfSecond);
        lightChanges = new int[signals];
        olderRed = new RecentSwings(signals, framesOfSecond);
        chromaticRed = new RecentSwings(signals, framesOfSecond);
        possibleRed = new RecentSwings(signals, framesOfSecond);
        redInTurn = new RecentSwings(signals, framesOfSecond);
        redLimits = new RedLimits(signals, reds, framesOfSecond);
        generalTally = new FlashTally(layout, framesOfSecond, field.get());
        redTally = new FlashTally(layout, framesOfSecond, field.get());
    }

    /** Looks for pixels that {@link #stepLight} and {@link #stepRed} are to be called for. */
    PixelScan scan() {
        return new PixelScan(layout.pixelCount(), luminance, reds);
    }

    /**
     * Looks at the light of a signal. What it was before the first frame may make one change more, before its first, or
     * move or take away that one; from there on it is as if it had been anything. So only a second that holds the first
     * may hold more.
     *
     * @param place the number of the frame in the run
     * @param value its luminance, in the units of {@link CodeLight}
     */
    void stepLight(int signal, int place, int value) {
        if (luminance.step(signal, value)) {
            int count = general.add(signal, place);
            generalTally.add(signal, place, count);
            lightChanges[signal]++;
            if (!isJoint && count == FlashCount.ALLOWED && lightChanges[signal] == count) {
                lastLightLimit = place;
            }
        }
    }

    /** Looks at the red of a signal; with its R - G - B. */
    void stepRed(int signal, int place, int redExcess) {
        int found = reds.step(signal, place, redExcess);
        if ((found & RedSwings.BY_OLDER_RULE) != 0) {
            redTally.add(signal, place, olderRed.add(signal, place));
        }
        boolean settled = place > reds.settledAt(RedSwings.BY_OLDER_RULE, signal);
        if ((found & (settled ? RedSwings.BY_OLDER_RULE : RedSwings.POSSIBLE)) != 0) {
            redLimits.addPossible(signal, place, possibleRed.add(signal, place));
        }
        if ((found & (settled ? RedSwings.BY_OLDER_RULE : RedSwings.IN_TURN)) != 0) {
            redLimits.addInTurn(signal, place, redInTurn.add(signal, place));
        }
        if ((found & RedSwings.BY_CHROMATICITY) != 0) {
            int count = chromaticRed.add(signal, place);
            redTally.add(signal, place, count);
            redLimits.addChromatic(signal, place, count);
        }
    }

    /** The same of a signal with this luminance, which is looked at only where that may make a difference. */
    void stepRed(int signal, int place, int value, int redExcess) {
        if (reds.mayChange(signal, value, redExcess)) {
            stepRed(signal, place, redExcess);
        }
    }

    /** Says that a frame has been looked at. */
    void endFrame(int place) {
        generalTally.endFrame(place);
        redTally.endFrame(place);
        redLimits.endFrame(place);
    }

    /** From here on counts stand for the joint of a loop. */
    void beginJoint() {
        isJoint = true;
        generalTally.beginJoint();
        redTally.beginJoint();
        redLimits.beginJoint();
    }

    /**
     * The last place with a second of the first round that might have more changes in the second round, such as turn a
     * verdict; below 0 for none.
     *
     * @param place the last of the first second after the joint
     * @param byArea whether what flashes too often is judged by its area; else one such light has settled it
     */
    int lastLimit(int place, boolean byArea) {
        int last = generalTally.isOpen(byArea) ? lastLightLimit : -1;
        return redTally.isOpen(byArea) ? Math.max(last, redLimits.last(place)) : last;
    }

    FlashTally tally(FlashRule rule) {
        return rule == FlashRule.GENERAL ? generalTally : redTally;
    }
}
