package org.duskloom.engine.preview;

import org.duskloom.engine.frame.FrameList;

/** Which frames a picture shows, where it cannot show all. */
public final class ShownFrames {
    /** Panels of a contact strip: as many as can be looked at one by one on a screen. */
    public static final int USUAL_PANELS = 24;

    /** Columns of a time strip: two minutes at 40 frames per second, and still a picture that any program opens. */
    public static final int USUAL_COLUMNS = 4800;

    private ShownFrames() {}

    /** Frames at even distances, the first among them; all if there are no more than that. */
    public static long[] evenly(FrameList frames, int count) {
        int shown = (int) Math.min(count, frames.count());
        long[] moments = new long[shown];
        for (int i = 0; i < shown; i++) {
            moments[i] = frames.frame((long) Math.floor((double) i * frames.count() / shown));
        }
        return moments;
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
