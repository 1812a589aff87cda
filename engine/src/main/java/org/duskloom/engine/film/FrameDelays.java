package org.duskloom.engine.film;

import java.io.IOException;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.png.AnimationWriter;
import org.duskloom.engine.time.ExactTime;

/**
 * How long each frame of an animated picture is shown. Browsers cut delays to whole milliseconds, so a delay that is
 * none is rounded to one, and what is lost or won is carried on: frame n begins within half a millisecond of its time.
 * Frames of 10 ms and less are shown for 100 ms by most browsers (common practice, no source), and are refused.
 */
final class FrameDelays {
    private static final int MILLIS = 1000;
    private static final int SHORTEST_MILLIS = 11;

    private final ExactTime step;

    /** @throws OutputRefusedException if frames follow each other too fast or too slowly */
    FrameDelays(ExactTime step, long stepFrames) throws IOException {
        this.step = step;
        double millis = MILLIS * step.seconds();
        if (millis < SHORTEST_MILLIS) {
            long enough = (long) Math.ceil(SHORTEST_MILLIS * stepFrames / millis);
            throw new OutputRefusedException("browsers do not show pictures of 10 ms and less in time, and these last "
                    + step + "; --every " + enough + " is slow enough");
        }
        if (millis > AnimationWriter.MOST_DELAY) {
            throw new OutputRefusedException("an animated PNG shows a picture for at most 65.5 s, and these last "
                    + step + "; take more of them");
        }
    }

    /** The delay of a frame, counted from 0 in the film, as a reduced fraction. */
    ExactTime of(long place) {
        long millis = startMillis(place + 1) - startMillis(place);
        return new ExactTime(millis, MILLIS);
    }

    private long startMillis(long place) {
        ExactTime start = new ExactTime(Math.multiplyExact(step.numerator(), place), step.denominator());
        long numerator = Math.multiplyExact(2L * MILLIS, start.numerator());
        return Math.floorDiv(numerator + start.denominator(), 2 * start.denominator());
    }
}
