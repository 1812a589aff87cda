package org.duskloom.engine.render;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.plan.PixelRuns;
import org.duskloom.engine.plan.PlannedCanvas;
import org.duskloom.engine.plan.PlannedCue;

/** The pixels of the stage that cues are played on; cues on the same pixels share the set. For one thread. */
final class PlayedPixels {
    /** By the very runs, which cues on the same members have in common. */
    private final Map<Set<PixelRuns>, BitSet> known = new HashMap<>();

    /** Those of all plays of a cue. Of members that start too late they do not count: that is said of them already. */
    BitSet of(List<LayeredCue> plays) {
        int tiles = PixelRuns.tileCount(plays.get(0).plan().pixelCount());
        return known.computeIfAbsent(runs(plays), all -> pixels(all, tiles));
    }

    private static Set<PixelRuns> runs(List<LayeredCue> plays) {
        PlannedCue first = plays.get(0).cue();
        if (plays.size() == 1 && first.canvasCount() == 1) {
            PlannedCanvas canvas = first.canvas(0);
            return canvas.firstFrame() < first.endFrameExclusive() ? Set.of(canvas.runs()) : Set.of();
        }
        Set<PixelRuns> runs = new HashSet<>();
        for (LayeredCue play : plays) {
            for (int i = 0; i < play.cue().canvasCount(); i++) {
                PlannedCanvas canvas = play.cue().canvas(i);
                if (canvas.firstFrame() < play.cue().endFrameExclusive()) {
                    runs.add(canvas.runs());
                }
            }
        }
        return runs;
    }

    private static BitSet pixels(Set<PixelRuns> all, int tiles) {
        BitSet pixels = new BitSet();
        for (PixelRuns runs : all) {
            for (int tile = 0; tile < tiles; tile++) {
                for (int run = runs.firstRun(tile); run < runs.endRun(tile); run++) {
                    int first = tile * Patch.CAPACITY + runs.cell(run);
                    pixels.set(first, first + runs.length(run));
                }
            }
        }
        return pixels;
    }
}
