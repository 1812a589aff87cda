package org.duskloom.engine.preview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.time.FrameSpan;

/**
 * Moments that show every cue of a show once. The moment of a cue divides it by the golden section, which is off whole
 * periods of any light that runs in it as far as a moment can be; where another cue has that frame, it is the next of
 * the golden sequence.
 */
public final class CueMoments {
    /** The fractional part of the golden ratio. */
    static final double GOLDEN = (StrictMath.sqrt(5) - 1) / 2;

    private static final int MOST_TRIES = 64;
    /** A cue as short as this has no frame but its first and its last. */
    private static final int SHORTEST_WITH_INSIDE = 3;

    private CueMoments() {}

    /**
     * A cue, for a picture.
     *
     * @param frames when it is seen
     * @param caption what it is called
     */
    public record Seen(FrameSpan frames, String caption) {
        public Seen {
            Objects.requireNonNull(frames, "frames");
            Objects.requireNonNull(caption, "caption");
        }
    }

    /**
     * A moment of each cue that is seen in some frames, in order of time, with the captions of the cues; cues that have
     * no frame for themselves share one. Of more cues than there may be moments, some are left out evenly.
     *
     * @param cues in any order
     * @param frames the frames that can be shown
     * @param most how many moments there are at most
     */
    public static List<ShownMoment> of(List<Seen> cues, FrameList frames, int most) {
        List<Seen> within = within(cues, frames);
        int shown = Math.min(most, within.size());
        TreeMap<Long, String> byFrame = new TreeMap<>();
        for (int i = 0; i < shown; i++) {
            Seen cue = within.get((int) ((long) i * within.size() / shown));
            byFrame.merge(frame(cue.frames(), byFrame), cue.caption(), (before, here) -> before + ", " + here);
        }
        List<ShownMoment> moments = new ArrayList<>();
        byFrame.forEach((frame, caption) -> moments.add(new ShownMoment(frame, caption)));
        return moments;
    }

    private static List<Seen> within(List<Seen> cues, FrameList frames) {
        if (frames.count() == 0) {
            return List.of();
        }
        FrameSpan span = new FrameSpan(frames.first(), frames.last() + 1);
        return cues.stream()
                .map(cue -> new Seen(cue.frames().overlap(span), cue.caption()))
                .filter(cue -> !cue.frames().isEmpty())
                .sorted(Comparator.comparing(cue -> cue.frames().firstFrame()))
                .toList();
    }

    private static long frame(FrameSpan cue, TreeMap<Long, String> taken) {
        boolean hasInside = cue.count() >= SHORTEST_WITH_INSIDE;
        long first = cue.firstFrame() + (hasInside ? 1 : 0);
        long count = cue.count() - (hasInside ? 2 : 0);
        for (int i = 1; i <= MOST_TRIES; i++) {
            long frame = first + (long) (fraction(i) * count);
            if (!taken.containsKey(frame)) {
                return frame;
            }
        }
        return first + (long) (fraction(1) * count);
    }

    /** The points of the golden sequence, 0 to 1: no two of them are near each other for long. */
    static double fraction(int i) {
        double turns = i * GOLDEN;
        return turns - Math.floor(turns);
    }
}
