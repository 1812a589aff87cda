package org.duskloom.cli;

import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;
import org.duskloom.engine.timeline.Timeline;

/** The part of a show that {@code --from} and {@code --to} name, in times as a timeline has them. */
final class TimeWindow {
    private TimeWindow() {}

    /**
     * The frames whose instants lie in it.
     *
     * @param from where it starts; null for the show's start
     * @param to where it ends, and is no longer part of it; null for the show's end
     * @throws TextFormatException if a time cannot be read, lies beyond the show, or there is no frame between them
     */
    static FrameSpan frames(Timeline timeline, String from, String to) throws TextFormatException {
        ExactTime start = time(timeline.times(), timeline.length(), "--from", from, ExactTime.ZERO);
        ExactTime end = time(timeline.times(), timeline.length(), "--to", to, timeline.length());
        FrameRate rate = timeline.rate();
        if (start.compareTo(end) >= 0 || FrameSpan.of(rate, start, end).isEmpty()) {
            throw new TextFormatException(
                    "no frame lies between " + start + " and " + end,
                    "a frame lasts " + rate.timeOf(1) + ", and the show " + timeline.length());
        }
        return FrameSpan.of(rate, start, end);
    }

    /**
     * One frame: the first whose instant is not before a time.
     *
     * @param at the time; null for the first frame
     * @throws TextFormatException if the time cannot be read, or no frame comes at or after it
     */
    static long frame(TimeContext times, FrameRate rate, long frameCount, String at) throws TextFormatException {
        ExactTime length = rate.timeOf(frameCount);
        long frame = rate.firstFrameAtOrAfter(time(times, length, "--at", at, ExactTime.ZERO));
        if (frame >= frameCount) {
            throw new TextFormatException("no frame comes at or after " + at, "the show lasts " + length);
        }
        return frame;
    }

    private static ExactTime time(TimeContext times, ExactTime length, String option, String text, ExactTime usual)
            throws TextFormatException {
        if (text == null) {
            return usual;
        }
        ExactTime time;
        try {
            time = TimeText.parse(text, times);
        } catch (TextFormatException fault) {
            throw new TextFormatException(option + ": " + fault.getMessage(), fault.hint());
        }
        if (time.compareTo(length) > 0) {
            throw new TextFormatException(option + " " + text + " lies beyond the show", "it lasts " + length);
        }
        return time;
    }
}
