package org.duskloom.engine.render;

import java.util.Arrays;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.plan.PixelRuns;

/**
 * How far the cues of a mask reach into each cell of a tile: 0 where there is none of them, so that what is under the
 * mask stays as it is, up to 1 where one is fully there. For one thread.
 */
final class MaskReach {
    private final float[] plane = new float[Patch.CAPACITY];

    void clear(int cells) {
        Arrays.fill(plane, 0, cells, 0f);
    }

    /** Adds a canvas of a cue that is seen: source-over of W3C Compositing, for alpha alone. */
    void add(PixelRuns runs, float opacity, int tile) {
        for (int run = runs.firstRun(tile); run < runs.endRun(tile); run++) {
            int from = runs.cell(run);
            add(opacity, from, from + runs.length(run));
        }
    }

    private void add(float opacity, int from, int to) {
        for (int cell = from; cell < to; cell++) {
            plane[cell] += opacity * (1f - plane[cell]);
        }
    }

    /** The reach into each cell. */
    float[] plane() {
        return plane;
    }
}
