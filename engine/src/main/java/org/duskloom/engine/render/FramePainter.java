package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.color.SrgbEncoder;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.plan.PixelRuns;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCanvas;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.plan.PlannedGroup;
import org.duskloom.engine.plan.PlannedLayer;

/**
 * One thread's way to render any frame of a plan. Owns all the memory it needs, so that rendering allocates nothing
 * once every brush has been opened, but for plays of a long repeat when they begin. A frame is painted tile by tile,
 * all layers over a tile before the next, so that a tile's planes stay in the processor's nearest cache.
 */
public final class FramePainter {
    /** What a cue costs besides its pixels, in pixels. */
    private static final int WORK_PER_CUE = 50;

    private final Plan plan;
    private final Brush[] brushes;
    /** What each brush was opened on. */
    private final Kernel[] kernels;
    /** How much is seen in the current frame of what each brush paints. */
    private final float[] opacities;

    private final CueTime time = new CueTime();
    private final Patch stage = new Patch();
    /** A layer whose cues are mixed with each other first, and the groups in it, by how deep they lie. */
    private final Patch[] groups;

    private final Patch source = new Patch();
    private final Patch spread = new Patch();
    private final MaskReach reach = new MaskReach();

    /** The cues that are seen in the current frame, layer by layer. */
    private final List<List<PlannedCue>> active = new ArrayList<>();

    private final List<ActiveCues> activeCues;

    private Set<PlannedCue> leftOut = Set.of();
    /** The cells of the current tile that are painted. */
    private int fromCell;

    private int toCell;
    /** Where pixels are asked for; null for all of the stage. */
    private CueExtent asked;
    /** Whether cues that lie elsewhere do not count at all. */
    private boolean passesOver;

    private long work;

    /** A painter for one thread. */
    public FramePainter(Plan plan) {
        this(plan, activeCues(plan));
    }

    /**
     * The same where it is known which cues are seen when.
     *
     * @param activeCues of the layers; for this painter alone
     */
    FramePainter(Plan plan, List<ActiveCues> activeCues) {
        this.plan = plan;
        this.brushes = new Brush[plan.brushCount()];
        this.kernels = new Kernel[plan.brushCount()];
        this.opacities = new float[plan.brushCount()];
        this.groups = new Patch[1 + deepest(plan)];
        Arrays.setAll(groups, depth -> new Patch());
        plan.layers().forEach(layer -> active.add(new ArrayList<>()));
        this.activeCues = activeCues;
    }

    /** A painter of the same plan for another thread, sooner there than one that is made anew. */
    FramePainter beside() {
        return new FramePainter(plan, activeCues.stream().map(ActiveCues::new).toList());
    }

    /** Which cues of each layer are seen when. */
    static List<ActiveCues> activeCues(Plan plan) {
        return plan.layers().stream()
                .map(layer -> new ActiveCues(layer.items()))
                .toList();
    }

    private static int deepest(Plan plan) {
        return plan.layers().stream()
                .flatMap(layer -> layer.items().stream())
                .mapToInt(item -> item instanceof PlannedCue cue ? cue.groupCount() : 0)
                .max()
                .orElse(0);
    }

    /** Renders from now on as if these cues were not there. */
    void leaveOut(Set<PlannedCue> cues) {
        leftOut = cues;
    }

    /**
     * Renders from now on only pixels of this extent; others get any codes, or keep theirs. Where cues lie beside it,
     * the last bits may be others than those of whole frames, as a layer may be left with one cue.
     */
    void askFor(CueExtent extent) {
        asked = extent;
        passesOver = true;
    }

    /** Renders from now on only pixels of this extent, with the very bytes of whole frames. */
    void keepTo(CueExtent extent) {
        asked = extent;
        passesOver = false;
    }

    /**
     * How much was done so far, in pixels that are painted by one cue; what a cue costs besides counts as some more.
     * The same on every machine.
     */
    long work() {
        return work;
    }

    /** Adds the cues of a layer that are seen in a frame, in the order of painting. */
    void addSeen(int layer, long frame, List<PlannedCue> seen) {
        activeCues.get(layer).addTo(seen, frame);
    }

    /**
     * Renders one frame.
     *
     * @param frame its number; outside of the plan's frames nothing is lit
     * @param rgb receives red, green and blue of each pixel in wiring order
     * @param offset where in {@code rgb} the frame starts
     */
    public void render(long frame, byte[] rgb, int offset) {
        begin(frame);
        paint(frame, rgb, offset);
    }

    /** Renders the frame that was rendered last once more, as if one more cue were not there. */
    void renderWithout(PlannedCue cue, long frame, byte[] rgb, int offset) {
        active.forEach(seen -> seen.remove(cue));
        paint(frame, rgb, offset);
    }

    private void paint(long frame, byte[] rgb, int offset) {
        int tiles = PixelRuns.tileCount(plan.pixelCount());
        for (int tile = 0; tile < tiles; tile++) {
            if (asked == null || asked.isIn(tile)) {
                renderTile(tile, frame, rgb, offset);
            }
        }
    }

    private void renderTile(int tile, long frame, byte[] rgb, int offset) {
        int firstPixel = tile * Patch.CAPACITY;
        fromCell = asked == null ? 0 : asked.firstPixel(tile) - firstPixel;
        toCell = asked == null
                ? Math.min(Patch.CAPACITY, plan.pixelCount() - firstPixel)
                : asked.endPixel(tile) - firstPixel;
        stage.reset(fromCell, toCell);
        stage.makeBlack();
        for (int layer = 0; layer < active.size(); layer++) {
            paintLayer(plan.layers().get(layer), active.get(layer), frame, tile);
        }
        stage.fill();
        SrgbEncoder.encode(
                stage.red, stage.green, stage.blue, fromCell, toCell, rgb, offset + 3 * (firstPixel + fromCell));
        work += toCell - fromCell;
    }

    private void begin(long frame) {
        for (int layer = 0; layer < active.size(); layer++) {
            List<PlannedCue> seen = active.get(layer);
            seen.clear();
            activeCues.get(layer).addTo(seen, frame);
            work += WORK_PER_CUE * (long) seen.size();
            if (!leftOut.isEmpty()) {
                seen.removeIf(leftOut::contains);
            }
            if (passesOver) {
                leaveAside(seen);
            }
            for (int i = 0; i < seen.size(); i++) {
                begin(seen.get(i), frame);
            }
        }
    }

    private void leaveAside(List<PlannedCue> seen) {
        int kept = 0;
        for (int i = 0; i < seen.size(); i++) {
            PlannedCue cue = seen.get(i);
            if (!isAside(cue)) {
                seen.set(kept++, cue);
            }
        }
        while (seen.size() > kept) {
            seen.remove(seen.size() - 1);
        }
    }

    /** Whether none of its pixels is asked for. */
    private boolean isAside(PlannedCue cue) {
        for (int i = 0; i < cue.canvasCount(); i++) {
            if (asked.meets(cue.canvas(i).runs())) {
                return false;
            }
        }
        return true;
    }

    private void begin(PlannedCue cue, long frame) {
        for (int i = 0; i < cue.canvasCount(); i++) {
            PlannedCanvas canvas = cue.canvas(i);
            opacities[canvas.brush()] = cue.opacityAt(canvas, frame);
            if (frame >= canvas.firstFrame() && (asked == null || asked.meets(canvas.runs()))) {
                work += WORK_PER_CUE;
                brush(canvas).begin(canvas.at(frame, cue.lengthSeconds(), time));
            }
        }
    }

    /** The brush of a canvas; opened if that of another play stands in its place. */
    private Brush brush(PlannedCanvas canvas) {
        int number = canvas.brush();
        if (kernels[number] != canvas.kernel()) {
            kernels[number] = canvas.kernel();
            brushes[number] = canvas.kernel().open();
        }
        return brushes[number];
    }

    private void paintLayer(PlannedLayer layer, List<PlannedCue> cues, long frame, int tile) {
        if (layer.mask() && !cues.isEmpty()) {
            paintGroup(cues, frame, tile);
            addReach(cues, 0, cues.size(), 0, frame, tile);
            Compositor.gate(groups[0], reach.plane(), layer.opacity(), stage);
        } else if (cues.size() == 1
                && cues.get(0).groupCount() == 0
                && !cues.get(0).isOverlapping()) {
            // A group of one is that one: it goes straight to the stage.
            PlannedCue cue = cues.get(0);
            paintCue(cue, layer.blend(), layer.opacity(), frame, tile, stage);
        } else if (!cues.isEmpty()) {
            paintGroup(cues, frame, tile);
            Compositor.paint(layer.blend(), groups[0], layer.opacity(), stage);
        }
    }

    private void paintGroup(List<PlannedCue> cues, long frame, int tile) {
        groups[0].reset(fromCell, toCell);
        groups[0].clear();
        paintGroup(cues, 0, cues.size(), 0, frame, tile);
    }

    /**
     * Paints cues, from one up to another, that have so many groups in common, over what is in the innermost of these.
     */
    private void paintGroup(List<PlannedCue> cues, int from, int to, int depth, long frame, int tile) {
        Patch patch = groups[depth];
        int next = from;
        while (next < to) {
            PlannedCue cue = cues.get(next);
            if (cue.groupCount() == depth) {
                paintCue(cue, cue.blend(), 1f, frame, tile, patch);
                next++;
            } else {
                int end = endOfGroup(cues, next, to, depth);
                Patch inner = groups[depth + 1];
                inner.reset(fromCell, toCell);
                inner.clear();
                paintGroup(cues, next, end, depth + 1, frame, tile);
                mix(cues, next, end, depth, frame, tile);
                next = end;
            }
        }
    }

    /** The first cue from there on that is not in the same group at this depth. */
    private static int endOfGroup(List<PlannedCue> cues, int from, int to, int depth) {
        PlannedGroup group = cues.get(from).group(depth);
        int end = from + 1;
        while (end < to && cues.get(end).groupCount() > depth && cues.get(end).group(depth) == group) {
            end++;
        }
        return end;
    }

    /** Mixes a group with what is under it. */
    private void mix(List<PlannedCue> cues, int from, int to, int depth, long frame, int tile) {
        PlannedGroup group = cues.get(from).group(depth);
        float opacity = group.opacityAt(frame);
        if (group.mask()) {
            addReach(cues, from, to, depth + 1, frame, tile);
            Compositor.gateGroup(groups[depth + 1], reach.plane(), opacity, groups[depth]);
        } else if (opacity > 0) {
            Compositor.paint(group.blend(), groups[depth + 1], opacity, groups[depth]);
        }
    }

    /** How far the cues of a mask reach, which have so many groups in common. */
    private void addReach(List<PlannedCue> cues, int from, int to, int depth, long frame, int tile) {
        reach.clear(toCell);
        for (int i = from; i < to; i++) {
            PlannedCue cue = cues.get(i);
            float seen = 1f;
            for (int group = depth; group < cue.groupCount(); group++) {
                seen *= cue.group(group).opacityAt(frame);
            }
            addReach(cue, seen, tile);
        }
    }

    private void addReach(PlannedCue cue, float seen, int tile) {
        for (int i = 0; i < cue.canvasCount(); i++) {
            PlannedCanvas canvas = cue.canvas(i);
            reach.add(canvas.runs(), opacities[canvas.brush()] * seen, tile);
        }
    }

    private void paintCue(PlannedCue cue, BlendMode blend, float layerOpacity, long frame, int tile, Patch backdrop) {
        for (int i = 0; i < cue.canvasCount(); i++) {
            PlannedCanvas canvas = cue.canvas(i);
            float opacity = opacities[canvas.brush()] * layerOpacity;
            PixelRuns runs = canvas.runs();
            int firstRun = runs.firstRun(tile);
            int endRun = runs.endRun(tile);
            if (opacity > 0
                    && firstRun < endRun
                    && frame >= canvas.firstFrame()
                    && (asked == null || asked.meets(runs, tile))) {
                Patch painted = painted(brushes[canvas.brush()], runs, firstRun, endRun);
                work += WORK_PER_CUE + painted.to() - painted.from();
                Compositor.paint(blend, painted, opacity, backdrop);
            }
        }
    }

    /** The canvas's pixels of the tile, each in its cell, and nothing in the cells between. */
    private Patch painted(Brush brush, PixelRuns runs, int firstRun, int endRun) {
        if (endRun == firstRun + 1) {
            int firstCell = Math.max(fromCell, runs.cell(firstRun));
            source.reset(firstCell, Math.min(toCell, runs.cell(firstRun) + runs.length(firstRun)));
            brush.paint(runs.canvasPixel(firstRun) + firstCell - runs.cell(firstRun), source);
            return source;
        }
        int last = endRun - 1;
        int firstPixel = runs.canvasPixel(firstRun);
        source.reset(0, runs.canvasPixel(last) + runs.length(last) - firstPixel);
        brush.paint(firstPixel, source);
        source.fill();
        spread.reset(runs.cell(firstRun), runs.cell(last) + runs.length(last));
        spread.clear();
        for (int run = firstRun; run < endRun; run++) {
            int from = runs.canvasPixel(run) - firstPixel;
            int to = runs.cell(run);
            int length = runs.length(run);
            System.arraycopy(source.red, from, spread.red, to, length);
            System.arraycopy(source.green, from, spread.green, to, length);
            System.arraycopy(source.blue, from, spread.blue, to, length);
            System.arraycopy(source.alpha, from, spread.alpha, to, length);
        }
        return spread;
    }
}
