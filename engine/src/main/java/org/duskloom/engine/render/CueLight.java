package org.duskloom.engine.render;

import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.Map;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.plan.PixelRuns;
import org.duskloom.engine.plan.PlannedCanvas;

/** What cues paint by themselves, before they are mixed with anything, one cue after the other. For one thread. */
final class CueLight {
    /** Light that rounds to the code 0: half a code of the straight foot of the sRGB curve (IEC 61966-2-1). */
    private static final float UNSEEN = 0.5f / 255 / 12.92f;

    /** Cues that follow each other often have a kernel in common; more brushes than these would fill the memory. */
    private static final int MOST_BRUSHES = 32;

    private final Map<Kernel, Brush> brushes = new IdentityHashMap<>();
    private final CueTime time = new CueTime();
    private final Patch patch = new Patch();
    private final BitSet touched = new BitSet();
    private final BitSet lit = new BitSet();

    /** Turns to another cue: nothing is touched yet. */
    void begin() {
        touched.clear();
    }

    /** The pixels that the cue was seen to paint in any colour, black too. */
    BitSet touched() {
        return touched;
    }

    /** The pixels that any cue was seen to paint in a colour that is not black. */
    BitSet lit() {
        return lit;
    }

    /** Whether all of these were. */
    boolean hasLit(BitSet pixels) {
        for (int pixel = pixels.nextSetBit(0); pixel >= 0; pixel = pixels.nextSetBit(pixel + 1)) {
            if (!lit.get(pixel)) {
                return false;
            }
        }
        return true;
    }

    /** Takes over what another thread has seen lit. */
    void takeOver(CueLight other) {
        lit.or(other.lit);
    }

    /** Looks at one frame of a play. A mask touches all that it reaches, and lights nothing. */
    void look(LayeredCue play, long frame) {
        for (int i = 0; i < play.cue().canvasCount(); i++) {
            PlannedCanvas canvas = play.cue().canvas(i);
            float opacity = play.opacityAt(canvas, frame);
            if (opacity <= UNSEEN) {
                continue;
            }
            if (play.isMask()) {
                reach(canvas.runs(), play.plan().pixelCount());
            } else if (frame >= canvas.firstFrame()) {
                Brush brush = brush(canvas.kernel());
                brush.begin(canvas.at(frame, play.cue().lengthSeconds(), time));
                look(canvas, brush, opacity, play.plan().pixelCount());
            }
        }
    }

    private Brush brush(Kernel kernel) {
        if (brushes.size() >= MOST_BRUSHES && !brushes.containsKey(kernel)) {
            brushes.clear();
        }
        return brushes.computeIfAbsent(kernel, Kernel::open);
    }

    private void reach(PixelRuns runs, int pixelCount) {
        for (int tile = 0; tile < PixelRuns.tileCount(pixelCount); tile++) {
            for (int run = runs.firstRun(tile); run < runs.endRun(tile); run++) {
                int first = tile * Patch.CAPACITY + runs.cell(run);
                touched.set(first, first + runs.length(run));
            }
        }
    }

    private void look(PlannedCanvas canvas, Brush brush, float opacity, int pixelCount) {
        PixelRuns runs = canvas.runs();
        for (int tile = 0; tile < PixelRuns.tileCount(pixelCount); tile++) {
            int firstRun = runs.firstRun(tile);
            int last = runs.endRun(tile) - 1;
            if (firstRun <= last) {
                int firstPixel = runs.canvasPixel(firstRun);
                patch.reset(0, runs.canvasPixel(last) + runs.length(last) - firstPixel);
                brush.paint(firstPixel, patch);
                patch.fill();
                for (int run = firstRun; run <= last; run++) {
                    look(
                            runs.canvasPixel(run) - firstPixel,
                            runs.length(run),
                            tile * Patch.CAPACITY + runs.cell(run),
                            opacity);
                }
            }
        }
    }

    private void look(int fromCell, int length, int firstStagePixel, float opacity) {
        for (int i = 0; i < length; i++) {
            int cell = fromCell + i;
            float brightest = Math.max(patch.red[cell], Math.max(patch.green[cell], patch.blue[cell]));
            if (brightest * opacity > UNSEEN) {
                lit.set(firstStagePixel + i);
            }
            if (Math.max(brightest, patch.alpha[cell]) * opacity > UNSEEN) {
                touched.set(firstStagePixel + i);
            }
        }
    }
}
