package org.duskloom.engine.display;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * Finds pixels that were probably typed wrong: far from the pixel before and from the one behind, while those two are
 * neighbours; and single long steps, beyond which all goes on as before. Long steps of which there are several as long,
 * as from row to row, are the way of the wire. Looks at coordinates that people type: lists of places, and files. The
 * median of the steps tells what is far, so that the mistakes themselves do not count. The limits are common practice,
 * no source: chosen so that displays wired as people wire them give no warning.
 */
final class SpacingJumps {
    /** How many median steps are far. */
    private static final double FAR = 4;

    /** Two long steps that differ by a smaller share are as long. */
    private static final double AS_LONG = 0.05;

    /** Of so many steps one may jump; where more do, the pixels are scattered. */
    private static final int ONE_JUMP_IN = 5;

    private static final int FEWEST_PIXELS = 5;
    private static final int MAX_SHOWN = 5;

    private SpacingJumps() {}

    static void warn(Shape shape, Problems problems) {
        String of = "of shape " + Quoted.of(shape.name());
        for (Shape.Run run : shape.runs()) {
            boolean typed = run.kind().equals("points") || run.kind().equals("pixels");
            if (typed && run.pixelCount() >= FEWEST_PIXELS) {
                int first = run.firstPixel();
                double far = far(shape.pixels(), first, run.pixelCount());
                List<Integer> apart = apart(shape.pixels(), first, run.pixelCount(), far);
                warn(apart, shape.pixels(), 0, of, run::locationOf, problems);
                warnOfJumps(shape, run, far, apart, problems);
            }
        }
    }

    private static void warnOfJumps(Shape shape, Shape.Run run, double far, List<Integer> apart, Problems problems) {
        for (int pixel : jumps(shape, run, far, apart)) {
            problems.warn(
                    run.locationOf(pixel),
                    "the spacing of shape " + Quoted.of(shape.name()) + " jumps: pixel " + (pixel + 1) + " is "
                            + rounded(distance(shape.pixels(), pixel - 1, pixel))
                            + " from the one before, most are " + rounded(far / FAR),
                    "is a coordinate mistyped? leave it so if the wire is that long there");
        }
    }

    /**
     * Only pixels that stand apart: a map may hold many shapes, whose wires jump. One that is a part by itself may do
     * so.
     */
    static void warn(PixelMap map, Problems problems) {
        for (Prop prop : map.props()) {
            if (prop.pixelCount() >= FEWEST_PIXELS) {
                double far = far(map.stage(), prop.firstPixel(), prop.pixelCount());
                List<Integer> apart = apart(map.stage(), prop.firstPixel(), prop.pixelCount(), far).stream()
                        .filter(pixel -> !isPartOfItsOwn(prop, pixel - prop.firstPixel()))
                        .toList();
                String of = "of prop " + Quoted.of(prop.name());
                warn(apart, map.stage(), prop.firstPixel(), of, map::locationOf, problems);
            }
        }
    }

    private static boolean beginsAPart(Shape shape, int pixel) {
        return shape.parts().stream().anyMatch(part -> has(part, pixel) != has(part, pixel - 1));
    }

    private static boolean has(Part part, int pixel) {
        return IntStream.of(part.pixels()).anyMatch(i -> i == pixel);
    }

    private static boolean isPartOfItsOwn(Prop prop, int pixel) {
        boolean inAny = false;
        for (Part part : prop.parts()) {
            boolean in = has(part, pixel);
            inAny |= in;
            if (in && (has(part, pixel - 1) || has(part, pixel + 1))) {
                return false;
            }
        }
        return inAny;
    }

    private static void warn(
            List<Integer> apart,
            Positions pixels,
            int first,
            String of,
            IntFunction<Location> locationOf,
            Problems problems) {
        for (int pixel : apart.subList(0, Math.min(MAX_SHOWN, apart.size()))) {
            problems.warn(
                    locationOf.apply(pixel),
                    "pixel " + (pixel - first + 1) + " " + of + " stands apart from its neighbours, at "
                            + shown(pixels, pixel),
                    "is a coordinate mistyped?");
        }
    }

    private static double far(Positions pixels, int first, int count) {
        return FAR * medianStep(pixels, first, count);
    }

    private static List<Integer> apart(Positions pixels, int first, int count, double far) {
        return IntStream.range(first + 1, first + count - 1)
                .filter(i -> far > 0 && standsApart(pixels, i, far))
                .boxed()
                .toList();
    }

    /**
     * The pixels behind long steps of which there is none as long; not those that stand apart, nor what is behind
     * these.
     */
    private static List<Integer> jumps(Shape shape, Shape.Run run, double far, List<Integer> apart) {
        Positions pixels = shape.pixels();
        int end = run.firstPixel() + run.pixelCount();
        List<Integer> jumps = IntStream.range(run.firstPixel() + 1, end)
                .filter(i -> far > 0 && distance(pixels, i - 1, i) > far)
                .filter(i -> !apart.contains(i) && !apart.contains(i - 1))
                .boxed()
                .toList();
        if (jumps.size() * ONE_JUMP_IN > run.pixelCount() - 1) {
            return List.of();
        }
        List<Integer> single = jumps.stream()
                .filter(i -> jumps.stream().noneMatch(j -> i != j.intValue() && areAsLong(pixels, i, j)))
                .filter(i -> !beginsAPart(shape, i))
                .toList();
        return single.subList(0, Math.min(MAX_SHOWN, single.size()));
    }

    private static boolean areAsLong(Positions pixels, int i, int j) {
        double a = distance(pixels, i - 1, i);
        double b = distance(pixels, j - 1, j);
        return Math.abs(a - b) <= AS_LONG * Math.max(a, b);
    }

    private static String rounded(double length) {
        return ShortestDecimal.of(Math.rint(length * 10) / 10);
    }

    private static boolean standsApart(Positions pixels, int i, double far) {
        return distance(pixels, i - 1, i) > far
                && distance(pixels, i, i + 1) > far
                && distance(pixels, i - 1, i + 1) <= far;
    }

    /** The median distance from a pixel to the next one on the wire; 0 for a single pixel. */
    static double medianStep(Positions pixels, int first, int count) {
        double[] steps = new double[Math.max(0, count - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = distance(pixels, first + i, first + i + 1);
        }
        Arrays.sort(steps);
        return steps.length == 0 ? 0 : steps[steps.length / 2];
    }

    static double distance(Positions pixels, int a, int b) {
        double dx = pixels.x(a) - pixels.x(b);
        double dy = pixels.y(a) - pixels.y(b);
        double dz = pixels.z(a) - pixels.z(b);
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private static String shown(Positions pixels, int i) {
        String flat = ShortestDecimal.of(pixels.x(i)) + ", " + ShortestDecimal.of(pixels.y(i));
        return pixels.z(i) == 0 ? flat : flat + ", " + ShortestDecimal.of(pixels.z(i));
    }
}
