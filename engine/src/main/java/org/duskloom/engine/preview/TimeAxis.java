package org.duskloom.engine.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongToDoubleFunction;

/** Which times are written along a run of frames: round ones, far enough apart to be read. */
final class TimeAxis {
    private static final double[] ROUND_SECONDS = {
        0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200, 18000, 36000
    };

    private TimeAxis() {}

    /**
     * One time.
     *
     * @param seconds from the start of the timeline
     * @param frame the first frame at or after it
     */
    record Tick(double seconds, long frame) {}

    /**
     * The ticks of the frames from {@code firstFrame} up to but not including {@code endFrameExclusive}.
     *
     * @param secondsOfFrame rises with the frame
     * @param framesApart how many frames lie at least between two ticks
     */
    static List<Tick> ticks(
            LongToDoubleFunction secondsOfFrame, long firstFrame, long endFrameExclusive, double framesApart) {
        double from = secondsOfFrame.applyAsDouble(firstFrame);
        double to = secondsOfFrame.applyAsDouble(endFrameExclusive);
        double step = roundStep((to - from) / (endFrameExclusive - firstFrame) * framesApart);
        List<Tick> ticks = new ArrayList<>();
        for (long k = (long) Math.ceil(from / step); k * step < to; k++) {
            long frame = firstAtOrAfter(k * step, secondsOfFrame, firstFrame, endFrameExclusive);
            if (frame < endFrameExclusive) {
                ticks.add(new Tick(k * step, frame));
            }
        }
        return ticks;
    }

    private static double roundStep(double atLeast) {
        for (double seconds : ROUND_SECONDS) {
            if (seconds >= atLeast) {
                return seconds;
            }
        }
        double day = 86_400;
        return day * Math.ceil(atLeast / day);
    }

    private static long firstAtOrAfter(double seconds, LongToDoubleFunction secondsOfFrame, long first, long end) {
        long low = first;
        long high = end;
        while (low < high) {
            long middle = low + (high - low) / 2;
            // A frame's instant is rounded to a double: a billionth of a second is nothing between two frames.
            if (secondsOfFrame.applyAsDouble(middle) >= seconds - 1e-9) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
