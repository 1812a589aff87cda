package org.duskloom.engine.render;

import java.util.Arrays;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.plan.PixelRuns;
import org.duskloom.engine.plan.PlannedCue;

/**
 * Between which cells of each tile a cue or a stretch of pixels lies: what is painted elsewhere does not tell whether
 * the cue is seen.
 */
final class CueExtent {
    private final int[] from;
    private final int[] to;
    /** Of all tiles. */
    private int firstPixel = Integer.MAX_VALUE;

    private int endPixel;

    private CueExtent(int tiles) {
        from = new int[tiles];
        to = new int[tiles];
        Arrays.fill(from, Patch.CAPACITY);
    }

    /** That of all canvases of a cue, on a stage of so many pixels. */
    static CueExtent of(PlannedCue cue, int pixelCount) {
        CueExtent extent = new CueExtent(PixelRuns.tileCount(pixelCount));
        for (int i = 0; i < cue.canvasCount(); i++) {
            extent.add(cue.canvas(i).runs());
        }
        return extent;
    }

    /** That of all pixels from one up to another, on a stage of so many pixels. */
    static CueExtent between(int firstPixel, int endPixel, int pixelCount) {
        CueExtent extent = new CueExtent(PixelRuns.tileCount(pixelCount));
        extent.firstPixel = firstPixel;
        extent.endPixel = endPixel;
        for (int pixel = firstPixel; pixel < endPixel; ) {
            int tile = pixel / Patch.CAPACITY;
            int end = Math.min(endPixel, (tile + 1) * Patch.CAPACITY);
            extent.from[tile] = pixel % Patch.CAPACITY;
            extent.to[tile] = end - tile * Patch.CAPACITY;
            pixel = end;
        }
        return extent;
    }

    private void add(PixelRuns runs) {
        firstPixel = Math.min(firstPixel, runs.firstPixel());
        endPixel = Math.max(endPixel, runs.endPixel());
        for (int tile = 0; tile < from.length; tile++) {
            if (runs.firstRun(tile) < runs.endRun(tile)) {
                from[tile] = Math.min(from[tile], first(runs, tile));
                to[tile] = Math.max(to[tile], end(runs, tile));
            }
        }
    }

    private static int first(PixelRuns runs, int tile) {
        return runs.cell(runs.firstRun(tile));
    }

    private static int end(PixelRuns runs, int tile) {
        int last = runs.endRun(tile) - 1;
        return runs.cell(last) + runs.length(last);
    }

    int tileCount() {
        return from.length;
    }

    /** The first pixel of it in a tile, counted from the first of the stage. */
    int firstPixel(int tile) {
        return tile * Patch.CAPACITY + from[tile];
    }

    /** The pixel after the last of it in a tile; not after the first where it has none there. */
    int endPixel(int tile) {
        return tile * Patch.CAPACITY + to[tile];
    }

    /** Whether it has pixels in a tile. */
    boolean isIn(int tile) {
        return from[tile] < to[tile];
    }

    /** Whether the first to the last pixel of these in a tile lie about some of its own. */
    boolean meets(PixelRuns runs, int tile) {
        return isIn(tile)
                && runs.firstRun(tile) < runs.endRun(tile)
                && first(runs, tile) < to[tile]
                && end(runs, tile) > from[tile];
    }

    /** Whether they do in any tile. */
    boolean meets(PixelRuns runs) {
        if (runs.firstPixel() >= endPixel || runs.endPixel() <= firstPixel) {
            return false;
        }
        int first = Math.max(firstPixel, runs.firstPixel()) / Patch.CAPACITY;
        int end = (Math.min(endPixel, runs.endPixel()) - 1) / Patch.CAPACITY;
        for (int tile = first; tile <= end; tile++) {
            if (meets(runs, tile)) {
                return true;
            }
        }
        return false;
    }
}
