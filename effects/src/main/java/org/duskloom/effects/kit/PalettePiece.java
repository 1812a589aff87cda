package org.duskloom.effects.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.duskloom.engine.color.CubicMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;

/**
 * A palette between two neighbouring places of its stops, where it is one mix of two colours or one colour.
 *
 * @param start the piece's first place, in [0, 1]
 * @param end where the next piece begins; the last piece is the place 1 alone
 */
record PalettePiece(Palette palette, double start, double end) {

    /** The pieces of a palette, in order; they cover [0, 1]. */
    static List<PalettePiece> of(Palette palette) {
        return of(List.of(palette));
    }

    /** The pieces of the first palette, cut where any of the palettes has a stop. */
    static List<PalettePiece> of(List<Palette> palettes) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
        palettes.forEach(palette -> palette.stops().forEach(stop -> cuts.add(stop.position() + 0.0)));
        List<PalettePiece> pieces = new ArrayList<>();
        for (double start : cuts) {
            Double end = cuts.higher(start);
            pieces.add(new PalettePiece(palettes.get(0), start, end == null ? start : end));
        }
        return pieces;
    }

    /** The same piece of another palette, which has no stop within. */
    PalettePiece ofPalette(Palette other) {
        return new PalettePiece(other, start, end);
    }

    double width() {
        return end - start;
    }

    /** The first float that belongs to the piece. */
    float firstFloat() {
        float nearest = (float) start;
        return nearest < start ? Math.nextUp(nearest) : nearest;
    }

    /** The colour at a share of the way from the start to the end; at 1 it is the one just before the end. */
    LinearColor at(double share) {
        double place = start + width() * share;
        return palette.at(place < end ? place : Math.max(start, Math.nextDown(end)));
    }

    /** Red, green and blue as cubic polynomials of the way from the start, where they are such. */
    Optional<double[][]> cubics() {
        if (palette.style().stepped() || width() == 0 || isBeyondTheEnds()) {
            LinearColor color = at(0);
            return CubicMix.between(color, color, palette.style().mix()).map(mix -> cubics(mix, 0, 1));
        }
        PaletteStop before = stop(lastStopAtOrBefore());
        PaletteStop after = stop(lastStopAtOrBefore() + 1);
        double beforeStart = start - before.position() - (lastStopAtOrBefore() < 0 ? -1 : 0);
        double gap = after.position() - before.position();
        double wrappedGap = gap > 0 ? gap : gap + 1;
        return CubicMix.between(before.color(), after.color(), palette.style().mix())
                .map(mix -> cubics(mix, beforeStart / wrappedGap, 1 / wrappedGap));
    }

    private static double[][] cubics(CubicMix mix, double firstShare, double sharePerPlace) {
        return new double[][] {
            moved(mix.red(), firstShare, sharePerPlace),
            moved(mix.green(), firstShare, sharePerPlace),
            moved(mix.blue(), firstShare, sharePerPlace)
        };
    }

    /** The polynomial p(first + slope x) of x. */
    private static double[] moved(double[] p, double first, double slope) {
        return new double[] {
            p[0] + first * (p[1] + first * (p[2] + first * p[3])),
            slope * (p[1] + first * (2 * p[2] + first * 3 * p[3])),
            slope * slope * (p[2] + first * 3 * p[3]),
            slope * slope * slope * p[3]
        };
    }

    private boolean isBeyondTheEnds() {
        int last = palette.stops().size() - 1;
        int index = lastStopAtOrBefore();
        return !palette.style().cyclic() && (index < 0 || index == last);
    }

    private int lastStopAtOrBefore() {
        int index = palette.stops().size() - 1;
        while (index >= 0 && palette.stops().get(index).position() > start) {
            index--;
        }
        return index;
    }

    /** The stop of an index, going round. */
    private PaletteStop stop(int index) {
        return palette.stops().get(Math.floorMod(index, palette.stops().size()));
    }
}
