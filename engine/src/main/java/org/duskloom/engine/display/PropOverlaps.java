package org.duskloom.engine.display;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;

/**
 * Finds props that hang in the same space. Boxes would not do: a fence runs through many boxes, and flowers hang inside
 * an arch. So pixels are counted that are nearer to a pixel of another prop than some more than half the step of
 * either; two wires that cross have one or two of them, two props put at one place have many. Pixels are looked up in a
 * grid of cells of half a step, so that the work grows with the pixels, not with their pairs; in a crowded cell only
 * the last ones are looked at.
 */
final class PropOverlaps {
    /**
     * The share of a step that is near: where one of two equal rings has its pixels between those of the other, they
     * are apart by half a chord of half the angle each, from 0.5 of a step of many pixels to 1 / sqrt(3) = 0.577 of a
     * step of three.
     */
    private static final double NEAR_SHARE_OF_STEP = 0.58;

    /** Of the smaller prop's pixels one in so many must be too near. */
    private static final int ONE_IN = 5;

    private static final int FEWEST_PIXELS = 2;
    private static final int MOST_LOOKED_AT = 64;
    private static final int MOST_PAIRS = 100_000;
    private static final int MAX_SHOWN = 10;

    private final PixelMap map;
    private final double[] reachOfProp;
    private final double cell;
    private final int[] lastInCell;
    private final int[] previousInCell;
    private final Map<Long, Near> nearPixels = new LinkedHashMap<>();

    /** How many pixels of a later prop are near to an earlier one. */
    private static final class Near {
        private int count;
        private int lastPixel = -1;

        void add(int pixel) {
            count += pixel == lastPixel ? 0 : 1;
            lastPixel = pixel;
        }
    }

    PropOverlaps(PixelMap map) {
        this.map = map;
        this.reachOfProp = map.props().stream()
                .mapToDouble(prop ->
                        SpacingJumps.medianStep(map.stage(), prop.firstPixel(), prop.pixelCount()) * NEAR_SHARE_OF_STEP)
                .toArray();
        this.cell = median(Arrays.stream(reachOfProp).filter(reach -> reach > 0).toArray());
        this.lastInCell = new int[Integer.highestOneBit(map.pixelCount()) * 4];
        this.previousInCell = new int[map.pixelCount()];
        Arrays.fill(lastInCell, -1);
    }

    /**
     * Adds a warning for each pair of props, up to a limit; gives whether an earlier and a later prop are such a pair.
     */
    BiPredicate<Integer, Integer> warn(Problems problems) {
        if (cell > 0) {
            lookAtAll(new SharedSpace(map, cell));
        }
        List<Long> pairs = nearPixels.keySet().stream().filter(this::isMany).toList();
        for (int i = 0; i < Math.min(MAX_SHOWN, pairs.size()); i++) {
            int more = i == MAX_SHOWN - 1 ? pairs.size() - MAX_SHOWN : 0;
            report(pairs.get(i), more, problems);
        }
        Set<Long> known = new HashSet<>(pairs);
        return (earlier, later) -> known.contains(pair(earlier, later));
    }

    private void lookAtAll(SharedSpace space) {
        for (int pixel = 0; pixel < map.pixelCount(); pixel++) {
            int prop = map.propIndexOf(pixel);
            if (reachOfProp[prop] > 0 && space.isShared(pixel)) {
                look(pixel, prop);
            }
        }
    }

    /** Counts the earlier props that a pixel is too near to, and enters it into its cell. */
    private void look(int pixel, int prop) {
        long x = cellOf(map.stage().x(pixel));
        long y = cellOf(map.stage().y(pixel));
        long z = cellOf(map.stage().z(pixel));
        for (int around = 0; around < 27; around++) {
            int slot = slot(x + around % 3 - 1, y + around / 3 % 3 - 1, z + around / 9 - 1);
            int looked = 0;
            for (int other = lastInCell[slot]; other >= 0 && looked++ < MOST_LOOKED_AT; other = previousInCell[other]) {
                int otherProp = map.propIndexOf(other);
                if (otherProp != prop && isNear(pixel, prop, other, otherProp)) {
                    count(pair(otherProp, prop), pixel);
                }
            }
        }
        int slot = slot(x, y, z);
        previousInCell[pixel] = lastInCell[slot];
        lastInCell[slot] = pixel;
    }

    private static long pair(int earlier, int later) {
        return (long) earlier << 32 | later;
    }

    private void count(long pair, int pixel) {
        Near near = nearPixels.get(pair);
        if (near == null && nearPixels.size() < MOST_PAIRS) {
            near = new Near();
            nearPixels.put(pair, near);
        }
        if (near != null) {
            near.add(pixel);
        }
    }

    private boolean isNear(int pixel, int prop, int other, int otherProp) {
        double reach = Math.min(cell, Math.min(reachOfProp[prop], reachOfProp[otherProp]));
        return SpacingJumps.distance(map.stage(), pixel, other) < reach;
    }

    private boolean isMany(long pair) {
        int near = nearPixels.get(pair).count;
        int smaller = Math.min(earlier(pair).pixelCount(), later(pair).pixelCount());
        return near >= FEWEST_PIXELS && near * ONE_IN >= smaller;
    }

    private void report(long pair, int more, Problems problems) {
        Prop later = later(pair);
        problems.warn(
                later.definedAt(),
                "prop " + Quoted.of(later.name()) + " hangs where prop "
                        + Quoted.of(earlier(pair).name()) + " is: " + nearPixels.get(pair).count + " of its "
                        + later.pixelCount() + " pixels are hardly farther than half a step from pixels of it"
                        + (more > 0 ? "; so it is with " + Counted.of(more, "more pair") + " of props" : ""),
                "check \"at\"; leave it so if one hangs in front of the other");
    }

    private Prop earlier(long pair) {
        return map.props().get((int) (pair >>> 32));
    }

    private Prop later(long pair) {
        return map.props().get((int) pair);
    }

    private long cellOf(double coordinate) {
        return (long) Math.floor(coordinate / cell);
    }

    /** Cells share slots now and then; the distance decides. */
    private int slot(long x, long y, long z) {
        return CellHash.of(x, y, z) & lastInCell.length - 1;
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values.length == 0 ? 0 : values[values.length / 2];
    }
}
