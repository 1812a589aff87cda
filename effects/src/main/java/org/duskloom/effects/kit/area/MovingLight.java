package org.duskloom.effects.kit.area;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;

/** What a reel that moves over a canvas is painted from. Immutable; the arrays are shared. */
final class MovingLight {
    /** The lattices together have no more pixels than this, else they are made coarser; 256 MB. */
    private static final double MOST_PIXELS = 1 << 24;

    private static final double COARSER = 1.25;

    private final Reel reel;
    private final Placing placing;
    private final AreaKernel.Style style;
    private final List<LightField> fields;
    private final LatticeStack.Need[] needs;
    private final LatticeStack[] stacks;
    private final int[] memberOf;
    /** For each pixel the next pixel that belongs to another member. */
    private final int[] runEnd;
    /** Right of the middle of the member's field, as a share of the field's longer side. */
    private final float[] right;

    private final float[] up;
    private final boolean opaque;

    private MovingLight(Canvas canvas, List<LightField> fields, Reel reel, Placing placing, AreaKernel.Style style) {
        this.reel = reel;
        this.placing = placing;
        this.style = style;
        this.fields = fields;
        memberOf = canvas.memberOf();
        runEnd = runEnds(memberOf);
        right = new float[memberOf.length];
        up = new float[memberOf.length];
        for (int pixel = 0; pixel < memberOf.length; pixel++) {
            LightField field = fields.get(memberOf[pixel]);
            right[pixel] = (float) ((canvas.x()[pixel] - field.centreX()) / field.longerSide());
            up[pixel] = (float) ((canvas.y()[pixel] - field.centreY()) / field.longerSide());
        }
        needs = fields.stream().map(this::need).toArray(LatticeStack.Need[]::new);
        stacks = new LatticeStack[needs.length];
        opaque = fillStacks() && style.repeats();
    }

    static MovingLight of(Canvas canvas, List<LightField> fields, Reel reel, Placing placing, AreaKernel.Style style) {
        return new MovingLight(canvas, fields, reel, placing, style);
    }

    private static int[] runEnds(int[] memberOf) {
        int[] runEnd = new int[memberOf.length];
        int end = memberOf.length;
        for (int pixel = memberOf.length - 1; pixel >= 0; pixel--) {
            if (pixel + 1 < memberOf.length && memberOf[pixel + 1] != memberOf[pixel]) {
                end = pixel + 1;
            }
            runEnd[pixel] = end;
        }
        return runEnd;
    }

    private LatticeStack.Need need(LightField field) {
        double[] range = placing.zoomRange(field);
        Pose pose = new Pose();
        placing.pose(new CueTime(), field, pose);
        pose.zoom(range[1]);
        return LatticeStack.Need.of(Footprint.of(reel, placing, field, pose), range[0], range[1]);
    }

    /** Makes the stacks; tells whether all pictures are opaque. */
    private boolean fillStacks() {
        Map<LatticeStack.Key, LatticeStack> byKey = new HashMap<>();
        double coarsest = coarsest();
        for (int member = 0; member < stacks.length; member++) {
            stacks[member] = byKey.computeIfAbsent(needs[member].key(), key -> new LatticeStack(key, reel, coarsest));
        }
        boolean allOpaque = true;
        for (int image = 0; image < reel.count(); image++) {
            LightImage light = reel.image(image);
            allOpaque &= light.isOpaque();
            for (LatticeStack stack : byKey.values()) {
                stack.add(image, light, style.repeats());
            }
        }
        return allOpaque;
    }

    private double coarsest() {
        List<LatticeStack.Key> keys =
                List.of(needs).stream().map(LatticeStack.Need::key).distinct().toList();
        double coarsest = 1;
        while (pixels(keys, coarsest) > MOST_PIXELS) {
            coarsest *= COARSER;
        }
        return coarsest > 1 ? coarsest : 0;
    }

    private double pixels(List<LatticeStack.Key> keys, double coarsest) {
        return keys.stream()
                .mapToDouble(key -> LatticeStack.pixels(key, reel, coarsest))
                .sum();
    }

    int memberCount() {
        return stacks.length;
    }

    int memberOf(int pixel) {
        return memberOf[pixel];
    }

    int runEnd(int pixel) {
        return runEnd[pixel];
    }

    float[] right() {
        return right;
    }

    float[] up() {
        return up;
    }

    LightField field(int member) {
        return fields.get(member);
    }

    LatticeStack.Need need(int member) {
        return needs[member];
    }

    LatticeStack stack(int member) {
        return stacks[member];
    }

    Reel reel() {
        return reel;
    }

    Placing placing() {
        return placing;
    }

    AreaKernel.Style style() {
        return style;
    }

    /** Whether no light shines through anywhere. */
    boolean isOpaque() {
        return opaque;
    }
}
