package org.duskloom.effects.kit.area;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.effect.Canvas;

/**
 * What a reel that moves over a canvas is painted from: its pictures, each reduced to no more pixels than matter, with
 * their sums. Immutable.
 */
final class MovingLight {
    /** The pictures together have no more pixels than this, else they are reduced; 192 MB. */
    private static final double MOST_PIXELS = 1 << 22;

    /**
     * The smallest box that is taken over a picture has at most so many of its pixels along a side. Finer ones would
     * change the mean over a box by less than 1/32, the half of a pixel at its edge.
     */
    private static final int PIXELS_OF_A_BOX = 16;

    private static final double COARSER = 1.25;

    private final Canvas canvas;
    private final List<LightField> fields;
    private final Reel reel;
    private final Placing placing;
    private final AreaKernel.Style style;
    /** For each member its pictures, which members whose lights are as far apart share. */
    private final SummedLight[][] pictures;

    private final boolean opaque;

    private MovingLight(Canvas canvas, List<LightField> fields, Reel reel, Placing placing, AreaKernel.Style style) {
        this.canvas = canvas;
        this.fields = fields;
        this.reel = reel;
        this.placing = placing;
        this.style = style;
        pictures = new SummedLight[fields.size()][];
        opaque = fillPictures() && style.repeats();
    }

    static MovingLight of(Canvas canvas, List<LightField> fields, Reel reel, Placing placing, AreaKernel.Style style) {
        return new MovingLight(canvas, fields, reel, placing, style);
    }

    /** Makes the pictures; tells whether all are opaque. */
    private boolean fillPictures() {
        List<Reduction.Size> sizes =
                sizes(fields.stream().map(this::need).toList(), reel.width(), reel.height(), reel.count());
        Map<Reduction.Size, SummedLight[]> shared = new HashMap<>();
        for (int member = 0; member < sizes.size(); member++) {
            pictures[member] = shared.computeIfAbsent(sizes.get(member), size -> new SummedLight[reel.count()]);
        }
        boolean allOpaque = true;
        for (int image = 0; image < reel.count(); image++) {
            LightImage light = reel.image(image);
            allOpaque &= light.isOpaque();
            for (Map.Entry<Reduction.Size, SummedLight[]> entry : shared.entrySet()) {
                LightImage reduced = entry.getKey().apply(light, style.repeats());
                entry.getValue()[image] = SummedLight.withTable(reduced, style.repeats());
            }
        }
        return allOpaque;
    }

    /** What a member needs: by the smallest cells that its lights ever have on the picture, whatever its turn. */
    private Reduction need(LightField field) {
        double zoom = placing.zoomRange(field)[1];
        double cell = Math.min(field.cellWidth(), field.cellHeight());
        double ofWidth = cell * reel.width() / (placing.width(field) * zoom);
        double ofHeight = cell * reel.height() / (placing.height(field) * zoom);
        return Reduction.of(ofWidth / PIXELS_OF_A_BOX, ofHeight / PIXELS_OF_A_BOX);
    }

    /**
     * To what size each member has its pictures reduced: as it needs them, or all of them so much further that they
     * have no more pixels than may be. What differs gets the same in the end, so that there is an end however many
     * members there are, and how many pictures.
     */
    static List<Reduction.Size> sizes(List<Reduction> needs, int width, int height, int pictures) {
        double coarser = 1;
        while (true) {
            double further = coarser;
            List<Reduction.Size> sizes = needs.stream()
                    .map(need -> need.by(further).size(width, height))
                    .toList();
            double pixels = pictures
                    * sizes.stream()
                            .distinct()
                            .mapToDouble(Reduction.Size::pixels)
                            .sum();
            if (pixels <= MOST_PIXELS || pixels <= pictures) {
                return sizes;
            }
            coarser *= COARSER;
        }
    }

    Canvas canvas() {
        return canvas;
    }

    /** A picture of the reel as a member needs it. */
    SummedLight picture(int member, int image) {
        return pictures[member][image];
    }

    /** How each member sees the pictures, for one thread. */
    Sight[] sights() {
        return fields.stream()
                .map(field -> new Sight(reel, placing, style, field))
                .toArray(Sight[]::new);
    }

    /** Whether no light shines through anywhere. */
    boolean isOpaque() {
        return opaque;
    }
}
