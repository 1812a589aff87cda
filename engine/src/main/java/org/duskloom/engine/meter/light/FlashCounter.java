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
    private final FlashTally generalTally;
    private final FlashTally redTally;

    FlashCounter(SignalLayout layout, PastColors past, int framesOfSecond, Supplier<FlashField> field) {
        this.layout = layout;
        int signals = layout.signalCount();
        luminance = new LuminanceSwings(signals);
        reds = new RedSwings(signals, past);
        general = new RecentSwings(signals, framesOfSecond);
        olderRed = new RecentSwings(signals, framesOfSecond);
        chromaticRed = new RecentSwings(signals, framesOfSecond);
        generalTally = new FlashTally(layout, framesOfSecond, field.get());
        redTally = new FlashTally(layout, framesOfSecond, field.get());
    }

    /** Looks for pixels that {@link #stepLight} and {@link #stepRed} are to be called for. */
    PixelScan scan() {
        return new PixelScan(layout.pixelCount(), luminance, reds);
    }

    /**
     * Looks at the light of a signal.
     *
     * @param place the number of the frame in the run
     * @param value its luminance, in the units of {@link CodeLight}
     */
    void stepLight(int signal, int place, int value) {
        if (luminance.step(signal, value)) {
            add(generalTally, general, signal, place);
        }
    }

    /** Looks at the red of a signal; with its R - G - B. */
    void stepRed(int signal, int place, int redExcess) {
        int found = reds.step(signal, place, redExcess);
        if ((found & RedSwings.BY_OLDER_RULE) != 0) {
            add(redTally, olderRed, signal, place);
        }
        if ((found & RedSwings.BY_CHROMATICITY) != 0) {
            add(redTally, chromaticRed, signal, place);
        }
    }

    /** The same of a signal with this luminance, which is looked at only where that may make a difference. */
    void stepRed(int signal, int place, int value, int redExcess) {
        if (reds.mayChange(signal, value, redExcess)) {
            stepRed(signal, place, redExcess);
        }
    }

    private static void add(FlashTally tally, RecentSwings recent, int signal, int place) {
        int count = recent.add(signal, place);
        tally.add(signal, place, count, recent.total(signal));
    }

    /** Says that a frame has been looked at. */
    void endFrame(int place) {
        generalTally.endFrame(place);
        redTally.endFrame(place);
    }

    /** From here on counts stand for the joint of a loop. */
    void beginJoint() {
        generalTally.beginJoint();
        redTally.beginJoint();
    }

    /**
     * Whether one change more within some second could turn a verdict.
     *
     * @param byArea whether what flashes too often is judged by its area; else one such light has settled it
     */
    boolean mayHangOnOneChange(boolean byArea) {
        return generalTally.isAtLimit(byArea) || redTally.isAtLimit(byArea);
    }

    FlashTally tally(FlashRule rule) {
        return rule == FlashRule.GENERAL ? generalTally : redTally;
    }
}
