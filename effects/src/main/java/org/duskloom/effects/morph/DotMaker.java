package org.duskloom.effects.morph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.effects.assign.EvenPairing;
import org.duskloom.effects.assign.Pairs;
import org.duskloom.effects.assign.Points;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ColorTracks;
import org.duskloom.engine.effect.PaletteTrack;

/** Makes the dots of one member after the other, and collects the ways that their colours go. */
final class DotMaker {
    /** How wide the cells are in which pixels are looked up; from 0.75 to 2.5 it was measured to make no difference. */
    private static final double CELL_SPACINGS = 1.5;

    private final Points places;
    /** Whether all pixels hang at z = 0. */
    private final boolean flat;

    private final PaletteTrack startPalette;
    private final PaletteTrack endPalette;
    private final boolean moving;
    private final EvenPairing pairing = new EvenPairing();
    /** Ways of the same colours are one; they are colours if these stay, else places. */
    private final Map<Object, Integer> wayOfEnds = new HashMap<>();
    /** Where each way starts and ends, in the order of their numbers. */
    private final List<Places> placesOfWays = new ArrayList<>();

    /** Places in the two palettes. */
    private record Places(double start, double end) {}

    DotMaker(Canvas canvas, PaletteTrack startPalette, PaletteTrack endPalette) {
        places = new Points(canvas.x(), canvas.y(), canvas.z());
        flat = Arrays.stream(canvas.z()).allMatch(z -> z == 0);
        this.startPalette = startPalette;
        this.endPalette = endPalette;
        moving = !startPalette.isConstant() || !endPalette.isConstant();
    }

    /**
     * The dots of a member.
     *
     * @param pixels those that may be lit
     * @param from where dots start; not empty
     * @param to where they end; not empty
     */
    Dots dots(int[] pixels, int[] from, int[] to) {
        Points starts = places.picked(from);
        Points ends = places.picked(to);
        PixelTree tree = new PixelTree(places, pixels);
        double startSpacing = tree.spacing(starts);
        double endSpacing = tree.spacing(ends);
        double side = CELL_SPACINGS * Math.max(startSpacing, endSpacing);
        PixelGrid grid = new PixelGrid(places, pixels, side > 0 ? side : 1, flat);
        Pairs pairs = pairing.pairs(starts, ends).inOrder(grid.ranks(from));
        DotWays ways = DotWays.of(IntStream.range(0, pairs.count())
                .map(dot -> way(place(pairs.from()[dot], from.length), place(pairs.to()[dot], to.length)))
                .toArray());
        return new Dots(
                grid,
                Spots.of(starts, pairs.from(), flat),
                Spots.of(ends, pairs.to(), flat),
                ways,
                startSpacing,
                endSpacing);
    }

    /** The ways of the colours of all dots made so far; a thread at a time takes one. */
    Supplier<ColorWays> ways() {
        if (moving) {
            return movingWays();
        }
        ColorWays ways = new FixedWays(placesOfWays.stream().map(this::ends).toList());
        return () -> ways;
    }

    /** Where the two palettes are one, ways that start or end at the same place of it share a colour. */
    private Supplier<ColorWays> movingWays() {
        Map<Double, Integer> starts = new LinkedHashMap<>();
        Map<Double, Integer> ends = startPalette == endPalette ? starts : new LinkedHashMap<>();
        int[] startOf = numbers(starts, placesOfWays.stream().map(Places::start));
        int[] endOf = numbers(ends, placesOfWays.stream().map(Places::end));
        ColorTracks startTracks = picked(startPalette, starts.keySet());
        ColorTracks endTracks = starts == ends ? startTracks : picked(endPalette, ends.keySet());
        return () -> {
            LiveColors startColors = new LiveColors(startTracks);
            LiveColors endColors = starts == ends ? startColors : new LiveColors(endTracks);
            return new MovingWays(startColors, endColors, startOf, endOf);
        };
    }

    /** Numbers values in the order in which they come first; gives the number of each. */
    private static int[] numbers(Map<Double, Integer> numberOf, Stream<Double> values) {
        return values.mapToInt(value -> numberOf.computeIfAbsent(value, key -> numberOf.size()))
                .toArray();
    }

    private static ColorTracks picked(PaletteTrack track, Collection<Double> places) {
        return track.picked(palette -> places.stream().map(palette::at).toList());
    }

    private FixedWays.Ends ends(Places places) {
        return new FixedWays.Ends(
                startPalette.first().at(places.start()), endPalette.first().at(places.end()));
    }

    private int way(double startPlace, double endPlace) {
        Places places = new Places(startPlace, endPlace);
        return wayOfEnds.computeIfAbsent(moving ? places : ends(places), key -> {
            placesOfWays.add(places);
            return placesOfWays.size() - 1;
        });
    }

    /** The middle of the step of a pixel along its part, in (0, 1). */
    private static double place(int number, int count) {
        return (number + 0.5) / count;
    }
}
