package org.duskloom.engine.render;

import java.util.BitSet;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;

/**
 * How much of a frame is the doing of a cue: what would be other light without it, so nothing where others cover it.
 * Frames are rendered with it and without it, as long as that is bearable; what counts is work, not time, so the same
 * is told on every machine. For one thread.
 */
public final class SeenLight {
    /** A tenth of a second or so of the work of {@link FramePainter#work}, for each cue. */
    static final long MOST_WORK_PER_CUE = 4_000_000;

    private static final long UNKNOWN = -1;

    private final FramePainter painter;
    private final int pixelCount;
    private final BitSet counted;
    private final byte[] with;
    private final byte[] without;
    private PlannedCue cue;
    private CueExtent extent;
    private long allowed;

    /**
     * For the cues of a plan.
     *
     * @param counted the pixels that are looked at
     */
    public SeenLight(Plan plan, BitSet counted) {
        this.counted = counted;
        painter = new FramePainter(plan);
        pixelCount = plan.pixelCount();
        with = new byte[3 * pixelCount];
        without = new byte[3 * pixelCount];
    }

    /**
     * By how much the pixels that are looked at are other light in a frame because of a cue.
     *
     * @return the sum of the differences of all codes; -1 once too much was looked at for this cue, which begins anew
     *     whenever another cue is asked about
     */
    public long of(PlannedCue asked, long frame) {
        if (cue != asked) {
            cue = asked;
            extent = CueExtent.of(cue, pixelCount);
            allowed = painter.work() + MOST_WORK_PER_CUE;
        }
        if (painter.work() >= allowed) {
            return UNKNOWN;
        }
        painter.askFor(extent);
        painter.render(frame, with, 0);
        painter.renderWithout(cue, frame, without, 0);
        long sum = 0;
        for (int tile = 0; tile < extent.tileCount(); tile++) {
            int end = extent.endPixel(tile);
            for (int i = next(extent.firstPixel(tile)); i < end; i = next(i + 1)) {
                sum += difference(3 * i) + difference(3 * i + 1) + difference(3 * i + 2);
            }
        }
        return sum;
    }

    /** The next pixel that is looked at; very large if there is none. */
    private int next(int from) {
        int pixel = counted.nextSetBit(from);
        return pixel < 0 ? Integer.MAX_VALUE : pixel;
    }

    private int difference(int code) {
        return Math.abs((with[code] & 255) - (without[code] & 255));
    }
}
