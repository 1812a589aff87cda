package org.duskloom.engine.preview;

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

    private ShownFrames() {}

    /**
     * Frames at about even distances, the first among them; all if there are no more than that. Light that runs round
     * in a second or two would seem to stand still at moments that are exactly even, so each but the first moves on by
     * a share of the distance, up to a half, that differs from one to the next, and off whole tenths of a second.
     */
    public static long[] evenly(FrameList frames, FrameRate rate, int count) {
        int shown = (int) Math.min(count, frames.count());
        double distance = (double) frames.count() / shown;
        long[] moments = new long[shown];
        for (int i = 0; i < shown; i++) {
            double moved = distance < SHORTEST_MOVED ? 0 : distance * CueMoments.fraction(i) / 2;
            long place = (long) Math.floor(i * distance + moved);
            boolean isRound = moved > 0 && isWholeTenth(frames.frame(place), rate);
            moments[i] = frames.frame(isRound ? place + 1 : place);
        }
        return moments;
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
