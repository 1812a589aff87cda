package org.duskloom.effects;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.PartFinder;
import org.duskloom.engine.random.StableHash;

/** Builds canvases by hand: members of pixels at places given in canvas units, in the order of the wiring. */
public final class Canvases {
    private final List<double[]> places = new ArrayList<>();
    private final List<Integer> memberOf = new ArrayList<>();
    private final List<Integer> keys = new ArrayList<>();
    private final List<Integer> counts = new ArrayList<>();
    private final List<Long> memberKeys = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    /** Pixels, counted from 0 within the member, of each part of each member. */
    private final List<Map<String, int[]>> parts = new ArrayList<>();

    /** A builder without members. */
    public Canvases() {}

    /** A canvas of one member with these places {x, y}. */
    public static Canvas of(double[]... xy) {
        return new Canvases().member("only", xy).build();
    }

    /** So many pixels from (-1, 0) to (1, 0); one pixel lies at (0, 0). */
    public static double[][] row(int count) {
        double[][] row = new double[count][];
        for (int i = 0; i < count; i++) {
            row[i] = new double[] {count == 1 ? 0 : -1 + 2.0 * i / (count - 1), 0};
        }
        return row;
    }

    /** Rows of pixels from the top, each from the left, as the fit {@code contain} lays them out. */
    public static double[][] grid(int columns, int rows) {
        double[][] grid = new double[columns * rows][];
        double half = Math.max(1, Math.max(columns, rows) - 1) / 2.0;
        for (int i = 0; i < grid.length; i++) {
            grid[i] =
                    new double[] {(i % columns - (columns - 1) / 2.0) / half, ((rows - 1) / 2.0 - i / columns) / half};
        }
        return grid;
    }

    /** Pixels scattered over the square from -1 to 1, the same ones every time. */
    public static double[][] scattered(int count) {
        double[][] places = new double[count][];
        for (int i = 0; i < count; i++) {
            places[i] = new double[] {
                2 * StableHash.unitDouble(StableHash.combine(i, 1)) - 1,
                2 * StableHash.unitDouble(StableHash.combine(i, 2)) - 1
            };
        }
        return places;
    }

    /** Each place moved by a matrix {xx, xy, yx, yy}. */
    public static double[][] moved(double[][] places, double... matrix) {
        return Arrays.stream(places)
                .map(p -> new double[] {matrix[0] * p[0] + matrix[1] * p[1], matrix[2] * p[0] + matrix[3] * p[1]})
                .toArray(double[][]::new);
    }

    /**
     * Adds a member whose random keys come from its name. It has the parts {@code first-half} and {@code second-half};
     * one pixel is both.
     */
    public Canvases member(String name, double[]... xy) {
        long key = StableHash.propKey(7, "cue", name);
        for (int i = 0; i < xy.length; i++) {
            places.add(xy[i]);
            memberOf.add(counts.size());
            keys.add(StableHash.pixelKey(key, i));
        }
        counts.add(xy.length);
        memberKeys.add(key);
        names.add(name);
        parts.add(new LinkedHashMap<>());
        part("first-half", IntStream.range(0, (xy.length + 1) / 2).toArray());
        return part("second-half", IntStream.range(xy.length / 2, xy.length).toArray());
    }

    /** Adds a part to the member added last: pixels counted from 0 within it. */
    public Canvases part(String name, int... pixels) {
        parts.get(parts.size() - 1).put(name, pixels);
        return this;
    }

    /** The canvas; its order is the wiring. */
    public Canvas build() {
        double[] position = new double[places.size()];
        for (int i = 1; i < position.length; i++) {
            position[i] = memberOf.get(i).equals(memberOf.get(i - 1)) ? position[i - 1] + 1 : 0;
        }
        return new Canvas(
                new Canvas.Coordinates(coordinate(0), coordinate(1), new double[places.size()]),
                new Canvas.Members(
                        ints(memberOf),
                        memberKeys.stream().mapToLong(Long::longValue).toArray()),
                new Canvas.Order(position, ints(counts)),
                ints(keys),
                new ListedParts(names, List.copyOf(parts), ints(counts)));
    }

    private double[] coordinate(int axis) {
        return places.stream().mapToDouble(place -> place[axis]).toArray();
    }

    private static int[] ints(List<Integer> values) {
        return values.stream().mapToInt(Integer::intValue).toArray();
    }

    private record ListedParts(List<String> names, List<Map<String, int[]>> parts, int[] counts) implements PartFinder {
        @Override
        public Optional<int[]> find(int member, String address) {
            int first = Arrays.stream(counts, 0, member).sum();
            return Optional.ofNullable(parts.get(member).get(address))
                    .filter(pixels -> pixels.length > 0)
                    .map(pixels ->
                            Arrays.stream(pixels).map(pixel -> first + pixel).toArray());
        }

        @Override
        public String memberName(int member) {
            return names.get(member);
        }

        @Override
        public List<String> known(int member) {
            return List.copyOf(parts.get(member).keySet());
        }
    }
}
