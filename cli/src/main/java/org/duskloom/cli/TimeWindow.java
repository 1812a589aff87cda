package org.duskloom.cli;

import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
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
        ExactTime start = time(timeline, "--from", from, ExactTime.ZERO);
        ExactTime end = time(timeline, "--to", to, timeline.length());
        FrameRate rate = timeline.rate();
        if (start.compareTo(end) >= 0 || FrameSpan.of(rate, start, end).isEmpty()) {
            throw new TextFormatException(
                    "no frame lies between " + start + " and " + end,
                    "a frame lasts " + rate.timeOf(1) + ", and the show " + timeline.length());
        }
        return FrameSpan.of(rate, start, end);
    }

    private static ExactTime time(Timeline timeline, String option, String text, ExactTime usual)
            throws TextFormatException {
        if (text == null) {
            return usual;
        }
        ExactTime time;
        try {
            time = TimeText.parse(text, timeline.times());
        } catch (TextFormatException fault) {
            throw new TextFormatException(option + ": " + fault.getMessage(), fault.hint());
        }
        if (time.compareTo(timeline.length()) > 0) {
            throw new TextFormatException(
                    option + " " + text + " lies beyond the show", "it lasts " + timeline.length());
        }
        return time;
    }
}
