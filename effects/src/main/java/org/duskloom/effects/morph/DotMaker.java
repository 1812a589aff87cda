package org.duskloom.effects.morph;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.duskloom.effects.assign.EvenPairing;
import org.duskloom.effects.assign.Pairs;
import org.duskloom.effects.assign.Points;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.Canvas;

/** Makes the dots of one member after the other, and collects the ways that their colours go. */
final class DotMaker {
    private final Points places;
    private final Palette startPalette;
    private final Palette endPalette;
    private final EvenPairing pairing = new EvenPairing();
    /** In the order of their numbers. */
    private final Map<ColorWays.Ends, Integer> wayOfEnds = new LinkedHashMap<>();

    DotMaker(Canvas canvas, Palette startPalette, Palette endPalette) {
        places = new Points(canvas.x(), canvas.y(), canvas.z());
        this.startPalette = startPalette;
        this.endPalette = endPalette;
    }

    /**
     * The dots of a member.
     *
     * @param pixels those that may be lit
     * @param from where dots start; not empty
     * @param to where they end; not empty
     */
    Dots dots(int[] pixels, int[] from, int[] to) {
        PixelTree tree = new PixelTree(places, pixels);
        Points starts = places.picked(from);
        Points ends = places.picked(to);
        Pairs pairs = pairing.pairs(starts, ends).inOrder(tree.ranks(from));
        int[] ways = IntStream.range(0, pairs.count())
                .map(dot -> way(place(pairs.from()[dot], from.length), place(pairs.to()[dot], to.length)))
                .toArray();
        double startSpacing = tree.spacing(starts);
        double endSpacing = tree.spacing(ends);
        return new Dots(
                tree,
                starts.picked(pairs.from()),
                ends.picked(pairs.to()),
                ways,
                startSpacing > 0 ? startSpacing : endSpacing,
                endSpacing > 0 ? endSpacing : startSpacing);
    }

    /** The ways of the colours of all dots made so far. */
    ColorWays ways() {
        return new ColorWays(List.copyOf(wayOfEnds.keySet()));
    }

    private int way(double startPlace, double endPlace) {
        ColorWays.Ends ends = new ColorWays.Ends(startPalette.at(startPlace), endPalette.at(endPlace));
        return wayOfEnds.computeIfAbsent(ends, key -> wayOfEnds.size());
    }

    /** The middle of the step of a pixel along its part, in (0, 1). */
    private static double place(int number, int count) {
        return (number + 0.5) / count;
    }
}
