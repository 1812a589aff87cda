package org.duskloom.effects.kit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;

/** A palette of a few opaque colours with hard edges between them; exact. */
final class StepRamp extends Ramp {
    private static final int MOST_EDGES = 10;
    private static final float STEEP = 3e38f;

    /** The first float of each colour but the first. */
    private final float[] edges;

    private final LinearColor[] colors;

    StepRamp(List<PalettePiece> pieces) {
        List<PalettePiece> steps = steps(pieces);
        colors = steps.stream().map(piece -> piece.at(0)).toArray(LinearColor[]::new);
        edges = new float[colors.length - 1];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = steps.get(i + 1).firstFloat();
        }
    }

    static boolean shows(Palette palette, List<PalettePiece> pieces) {
        boolean opaque = palette.stops().stream().allMatch(stop -> stop.color().alpha() == 1);
        return palette.style().stepped() && opaque && steps(pieces).size() <= MOST_EDGES + 1;
    }

    /** The pieces whose colour differs from that of the piece before. */
    private static List<PalettePiece> steps(List<PalettePiece> pieces) {
        List<PalettePiece> steps = new ArrayList<>();
        LinearColor before = null;
        for (PalettePiece piece : pieces) {
            if (!piece.at(0).equals(before)) {
                steps.add(piece);
            }
            before = piece.at(0);
        }
        return steps;
    }

    @Override
    public boolean isOpaque() {
        return true;
    }

    @Override
    void fillLight(float[] places, int from, int to, float[] red, float[] green, float[] blue, float[] alpha) {
        Arrays.fill(red, from, to, colors[0].red());
        Arrays.fill(green, from, to, colors[0].green());
        Arrays.fill(blue, from, to, colors[0].blue());
        for (int i = 0; i < edges.length; i++) {
            reached(places, edges[i], from, to, alpha);
            replace(red, colors[i + 1].red(), alpha, from, to);
            replace(green, colors[i + 1].green(), alpha, from, to);
            replace(blue, colors[i + 1].blue(), alpha, from, to);
        }
    }

    /** 1 where the place has reached the edge, else 0. */
    static void reached(float[] places, float edge, int from, int to, float[] reached) {
        for (int i = from; i < to; i++) {
            reached[i] = 1f - Math.min(1f, Math.max(0f, (edge - places[i]) * STEEP));
        }
    }

    private static void replace(float[] plane, float value, float[] where, int from, int to) {
        for (int i = from; i < to; i++) {
            plane[i] = plane[i] * (1f - where[i]) + value * where[i];
        }
    }
}
