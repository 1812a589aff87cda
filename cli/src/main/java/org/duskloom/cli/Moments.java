package org.duskloom.cli;

import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.TimeStrip;
import org.duskloom.engine.time.FrameSpan;

/** Which frames a preview shows, where it cannot show all. */
final class Moments {
    /** Panels of a contact strip: as many as can be looked at one by one on a screen. */
    static final int USUAL_PANELS = 24;

    /** Columns of a time strip: two minutes at 40 frames per second, and still a picture that any program opens. */
    static final int USUAL_COLUMNS = 4800;

    private Moments() {}

    /** Frames at even distances, the first among them; all if there are no more than that. */
    static long[] evenly(FrameSpan span, int count) {
        int shown = (int) Math.min(count, span.count());
        long[] frames = new long[shown];
        for (int i = 0; i < shown; i++) {
            frames[i] = span.firstFrame() + (long) Math.floor((double) i * span.count() / shown);
        }
        return frames;
    }

    /** How many frames a column of a time strip stands for, so that there are at most so many columns, and they fit. */
    static long framesPerColumn(PreviewScene scene, FrameSpan span, int mostColumns) {
        long columns = Math.max(1, Math.min(mostColumns, TimeStrip.mostColumns(scene)));
        return (span.count() - 1) / columns + 1;
    }

    /** The first frame and every n-th after it. */
    static long[] everyNth(FrameSpan span, long distance) {
        long[] frames = new long[(int) ((span.count() - 1) / distance + 1)];
        for (int i = 0; i < frames.length; i++) {
            frames[i] = span.firstFrame() + i * distance;
        }
        return frames;
    }
}
