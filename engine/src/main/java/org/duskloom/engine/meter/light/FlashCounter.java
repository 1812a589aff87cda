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

    FlashCounter(SignalLayout layout, int framesOfSecond, Supplier<FlashField> field) {
        this.layout = layout;
        int signals = layout.signalCount();
        luminance = new LuminanceSwings(signals);
        reds = new RedSwings(signals);
        general = new RecentSwings(signals, framesOfSecond);
        olderRed = new RecentSwings(signals, framesOfSecond);
        chromaticRed = new RecentSwings(signals, framesOfSecond);
        generalTally = new FlashTally(layout, framesOfSecond, field.get());
        redTally = new FlashTally(layout, framesOfSecond, field.get());
    }

    /**
     * Looks at a signal that has another colour than in the frame before, in linear light.
     *
     * @param place the number of the frame in the run
     * @return whether all is said; else {@link #stepRed} is to look at it too
     */
    boolean step(int signal, int place, float r, float g, float b) {
        if (luminance.step(signal, 0.2126f * r + 0.7152f * g + 0.0722f * b)) {
            generalTally.add(signal, place, general.add(signal, place));
        }
        return reds.pass(signal, r, g, b);
    }

    /** Looks at what is or was red; with red, green and blue of the colour before, or of this one for the first. */
    void stepRed(int signal, int place, float r, float g, float b, float r0, float g0, float b0) {
        int found = reds.step(signal, r, g, b, r0, g0, b0);
        if ((found & RedSwings.BY_OLDER_RULE) != 0) {
            redTally.add(signal, place, olderRed.add(signal, place));
        }
        if ((found & RedSwings.BY_CHROMATICITY) != 0) {
            redTally.add(signal, place, chromaticRed.add(signal, place));
        }
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

    FlashTally tally(FlashRule rule) {
        return rule == FlashRule.GENERAL ? generalTally : redTally;
    }

    SignalLayout layout() {
        return layout;
    }
}
