package org.duskloom.engine.preview;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.time.FrameSpan;

/**
 * Moments that show every cue of a show once. The moment of a cue divides it by the golden section, which is off whole
 * periods of any light that runs in it as far as a moment can be; where another cue has that frame, or the cue is
 * covered then or hardly lit, it is the next of the golden sequence.
 */
public final class CueMoments {
    /** The fractional part of the golden ratio. */
    static final double GOLDEN = (StrictMath.sqrt(5) - 1) / 2;

    private static final int MOST_TRIES = 64;

    /** So many moments of a cue are held against each other. */
    private static final int MOST_COMPARED = 8;

    /** A cue as short as this has no frame but its first and its last. */
    private static final int SHORTEST_WITH_INSIDE = 3;

    private CueMoments() {}

    /**
     * A cue, for a picture.
     *
     * @param frames when it is seen
     * @param caption what it is called
     * @param light how much is seen of it in a frame, in any measure; negative where that is not known
     */
    public record Seen(FrameSpan frames, String caption, LongUnaryOperator light) {
        public Seen {
            Objects.requireNonNull(frames, "frames");
            Objects.requireNonNull(caption, "caption");
            Objects.requireNonNull(light, "light");
        }

        /** Whether nothing is seen of it in any of many moments. */
        private boolean isDark() {
            return Arrays.stream(tries(frames)).map(light).allMatch(seen -> seen == 0);
        }

        private Seen within(FrameSpan span) {
            return new Seen(frames.overlap(span), caption, light);
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
        return moments(evenly(within(cues, frames), most));
    }

    /**
     * The same of those cues alone of which something is seen, or of which that is not known.
     *
     * @param cues in any order
     * @param frames the frames that can be shown
     * @param most how many moments there are at most
     */
    public static List<ShownMoment> ofVisible(List<Seen> cues, FrameList frames, int most) {
        List<Seen> left = within(cues, frames);
        Map<Seen, Boolean> dark = new IdentityHashMap<>();
        List<Seen> chosen = evenly(left, most);
        // Only those are looked at that would be shown: there may be very many more.
        while (chosen.stream()
                        .filter(cue -> dark.computeIfAbsent(cue, Seen::isDark))
                        .count()
                > 0) {
            left = left.stream().filter(cue -> !dark.getOrDefault(cue, false)).toList();
            chosen = evenly(left, most);
        }
        return moments(chosen);
    }

    private static List<Seen> evenly(List<Seen> cues, int most) {
        int shown = Math.min(most, cues.size());
        return IntStream.range(0, shown)
                .mapToObj(i -> cues.get((int) ((long) i * cues.size() / shown)))
                .toList();
    }

    private static List<ShownMoment> moments(List<Seen> cues) {
        TreeMap<Long, String> byFrame = new TreeMap<>();
        for (Seen cue : cues) {
            byFrame.merge(frame(cue, byFrame), cue.caption(), (before, here) -> before + ", " + here);
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
                .map(cue -> cue.within(span))
                .filter(cue -> !cue.frames().isEmpty())
                .sorted(Comparator.comparing(cue -> cue.frames().firstFrame()))
                .toList();
    }

    /**
     * The first of some candidates in which at least half as much is seen of the cue as in the best of them; where all
     * of them are dark, the first of the others in which anything is seen.
     */
    private static long frame(Seen cue, TreeMap<Long, String> taken) {
        long[] candidates = candidates(cue.frames(), taken);
        long[] light =
                Arrays.stream(candidates).limit(MOST_COMPARED).map(cue.light()).toArray();
        long most = Arrays.stream(light).max().orElseThrow();
        if (most <= 0) {
            return Arrays.stream(candidates)
                    .skip(MOST_COMPARED)
                    .filter(frame -> most == 0 && cue.light().applyAsLong(frame) > 0)
                    .findFirst()
                    .orElse(candidates[0]);
        }
        int chosen = 0;
        while (2 * light[chosen] < most) {
            chosen++;
        }
        return candidates[chosen];
    }

    /** Frames that no other cue has; if there is none, that of the golden section. */
    private static long[] candidates(FrameSpan cue, TreeMap<Long, String> taken) {
        long[] tries = tries(cue);
        long[] free =
                Arrays.stream(tries).filter(frame -> !taken.containsKey(frame)).toArray();
        return free.length > 0 ? free : new long[] {tries[0]};
    }

    /** Frames inside a cue, in the order of the golden sequence. */
    private static long[] tries(FrameSpan cue) {
        boolean hasInside = cue.count() >= SHORTEST_WITH_INSIDE;
        long first = cue.firstFrame() + (hasInside ? 1 : 0);
        long count = cue.count() - (hasInside ? 2 : 0);
        return IntStream.rangeClosed(1, MOST_TRIES)
                .mapToLong(i -> first + (long) (fraction(i) * count))
                .distinct()
                .toArray();
    }

    /** The points of the golden sequence, 0 to 1: no two of them are near each other for long. */
    static double fraction(int i) {
        double turns = i * GOLDEN;
        return turns - Math.floor(turns);
    }
}
