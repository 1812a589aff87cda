package org.duskloom.engine.preview;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.time.FrameRate;

/** Which frames a picture shows, where it cannot show all. */
public final class ShownFrames {
    /** Panels of a contact strip: as many as can be looked at one by one on a screen. */
    public static final int USUAL_PANELS = 24;

    /** Columns of a time strip: two minutes at 40 frames per second, and still a picture that any program opens. */
    public static final int USUAL_COLUMNS = 4800;

    /** Moments nearer than this many frames stay where they are. */
    private static final int SHORTEST_MOVED = 4;

    /** Out of so many frames a moment is picked, of fewer where that would take long. */
    private static final int CANDIDATES = 5;

    /** So many pixels of frames are looked at for that; about a second of rendering. */
    private static final long MOST_PIXELS = 20_000_000;

    private ShownFrames() {}

    /**
     * Candidates for moments at about even distances, of which a picture shows one each; the first frame alone for the
     * first moment, and each frame alone if there are no more than moments. Light that runs round in a second or two
     * would seem to stand still at moments that are exactly even, so the others lie on from there by shares of the
     * distance, up to a half, that differ from one to the next, and off whole tenths of a second.
     *
     * @param count how many moments there are at most
     * @param pixels of a frame: of many pixels there are fewer candidates
     * @return for each moment the frames, rising, also from moment to moment
     */
    public static long[][] evenly(FrameList frames, FrameRate rate, int count, int pixels) {
        int shown = (int) Math.min(count, frames.count());
        double distance = (double) frames.count() / shown;
        long bearable = MOST_PIXELS / (Math.max(1L, pixels) * Math.max(1, shown));
        int tries = distance < SHORTEST_MOVED ? 1 : (int) Math.max(1, Math.min(CANDIDATES, bearable));
        long[][] moments = new long[shown][];
        for (int i = 0; i < shown; i++) {
            double even = i * distance;
            double most = i == 0 || distance < SHORTEST_MOVED ? 0 : distance / 2;
            moments[i] = IntStream.range(i, i + tries)
                    .mapToLong(number -> near(frames, rate, even, most * CueMoments.fraction(number)))
                    .sorted()
                    .distinct()
                    .toArray();
        }
        return moments;
    }

    /** Each frame alone, of which there is no choice. */
    public static long[][] eachAlone(long[] frames) {
        return Arrays.stream(frames).mapToObj(frame -> new long[] {frame}).toArray(long[][]::new);
    }

    private static long near(FrameList frames, FrameRate rate, double even, double moved) {
        long place = (long) Math.floor(even + moved);
        boolean isRound = moved > 0 && isWholeTenth(frames.frame(place), rate);
        return frames.frame(isRound ? place + 1 : place);
    }

    /** Whether frame / rate seconds is a whole number of tenths. */
    private static boolean isWholeTenth(long frame, FrameRate rate) {
        return frame * 10 % rate.numerator() * rate.denominator() % rate.numerator() == 0;
    }

    /** How many frames a column of a time strip stands for, so that there are at most so many columns, and they fit. */
    public static long framesPerColumn(PreviewScene scene, FrameList frames, int mostColumns) {
        long columns = Math.max(1, Math.min(mostColumns, TimeStrip.mostColumns(scene)));
        return (frames.count() - 1) / columns + 1;
    }

    /** The first frame and every n-th after it. */
    public static long[] everyNth(FrameList frames, long distance) {
        long[] moments = new long[(int) ((frames.count() - 1) / distance + 1)];
        for (int i = 0; i < moments.length; i++) {
            moments[i] = frames.frame(i * distance);
        }
        return moments;
    }
}
