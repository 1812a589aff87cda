package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.engine.display.svg.SvgPixels;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/** The pixels of one shape while step follows step. */
final class ShapeDraft {
    private final String what;
    private final String name;
    private final Allowance allowance;
    private final Problems problems;
    private final List<Shape.Run> runs = new ArrayList<>();
    private final MadeParts parts = new MadeParts();
    private double[] x = new double[64];
    private double[] y = new double[64];
    private double[] z = new double[64];
    private int size;

    /**
     * @param what the shape, for messages
     * @param name a sound name
     */
    ShapeDraft(String what, String name, Allowance allowance, Problems problems) {
        this.what = what;
        this.name = name;
        this.allowance = allowance;
        this.problems = problems;
    }

    String what() {
        return what;
    }

    String name() {
        return name;
    }

    /** Adds the pixels of a step. */
    void add(StepReader.Written written) {
        if (!isAllowed(written.step().pixelCount(), written.location())) {
            return;
        }
        Strand strand = Strand.of(written.step());
        if (strand.reachesBeyond(MapReader.MAX_COORDINATE)) {
            reportBeyond(written.location());
            return;
        }
        int first = size;
        Location step = written.location();
        append(written.word(), new double[][] {strand.x, strand.y, strand.z}, step, List.of());
        written.part().map(TextNode::value).ifPresent(path -> parts.add(path, first, strand.size(), strand.lines()));
    }

    /** Adds the pixels of a file; gives whether there was room for them. */
    boolean add(PixelMap file, Location asker) {
        int count = file.pixelCount();
        double[][] values = new double[3][count];
        for (int i = 0; i < count; i++) {
            values[0][i] = file.own().x(i);
            values[1][i] = file.own().y(i);
            values[2][i] = file.own().z(i);
        }
        List<Integer> lines = IntStream.range(0, count)
                .mapToObj(pixel -> file.locationOf(pixel).line())
                .toList();
        return add(values, file.props().get(0).definedAt(), lines, asker);
    }

    /** Adds the pixels of a drawing; gives whether there was room for them. */
    boolean add(SvgPixels drawing, double millimetresPerUnit, Location asker) {
        double[][] values = {
            Arrays.stream(drawing.x()).map(x -> x / millimetresPerUnit).toArray(),
            Arrays.stream(drawing.y()).map(y -> y / millimetresPerUnit).toArray(),
            new double[drawing.count()]
        };
        if (Stream.of(values).flatMapToDouble(Arrays::stream).anyMatch(ShapeDraft::isBeyond)) {
            reportBeyond(asker);
            return false;
        }
        List<Integer> lines = drawing.places().stream().map(Location::line).toList();
        return add(values, drawing.places().get(0), lines, asker);
    }

    private boolean add(double[][] values, Location definedAt, List<Integer> lines, Location asker) {
        if (!isAllowed(values[0].length, asker)) {
            return false;
        }
        append("pixels", values, definedAt, lines);
        return true;
    }

    private static boolean isBeyond(double coordinate) {
        return !(Math.abs(coordinate) <= MapReader.MAX_COORDINATE);
    }

    private void reportBeyond(Location place) {
        problems.error(
                place,
                "a pixel of " + what + " has a coordinate beyond " + (long) MapReader.MAX_COORDINATE,
                "choose a larger unit");
    }

    int pixelCount() {
        return size;
    }

    /** The pixels so far; one at the zero point where there are none. */
    Positions positions() {
        int count = Math.max(1, size);
        return new Positions(Arrays.copyOf(x, count), Arrays.copyOf(y, count), Arrays.copyOf(z, count));
    }

    List<Shape.Run> runs() {
        return runs;
    }

    TreeMap<String, int[]> madeParts() {
        return parts.byPath();
    }

    private boolean isAllowed(long count, Location asker) {
        if (allowance.takePixels(count)) {
            return true;
        }
        problems.error(
                asker,
                "the shapes of the display have more than " + PixelMap.MAX_PIXELS + " pixels",
                "check the counts of " + what);
        return false;
    }

    private void append(String kind, double[][] next, Location location, List<Integer> lines) {
        int count = next[0].length;
        int end = size + count;
        if (end > x.length) {
            int room = Math.max(end, Math.min(PixelMap.MAX_PIXELS, x.length * 2));
            x = Arrays.copyOf(x, room);
            y = Arrays.copyOf(y, room);
            z = Arrays.copyOf(z, room);
        }
        System.arraycopy(next[0], 0, x, size, count);
        System.arraycopy(next[1], 0, y, size, count);
        System.arraycopy(next[2], 0, z, size, count);
        runs.add(new Shape.Run(kind, size, count, location, lines));
        size = end;
    }
}
