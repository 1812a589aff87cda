package org.duskloom.engine.display;

import java.util.Arrays;
import org.duskloom.engine.document.Quoted;
import org.duskloom.engine.document.ShortestDecimal;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Problems;

/**
 * Finds pixels that were probably typed wrong: far from the pixel before and from the one behind, while those two are
 * neighbours. A jump of the wire to another place gives one long step only and is no mistake. Looks at coordinates
 * that people type: lists of places, and files. The median of the steps tells what is far, so that the mistakes
 * themselves do not count.
 */
final class SpacingJumps {
    /** How many median steps are far. */
    private static final double FAR = 4;

    private static final int FEWEST_PIXELS = 5;
    private static final int MAX_SHOWN = 5;

    private SpacingJumps() {}

    static void warn(Shape shape, Problems problems) {
        for (Shape.Run run : shape.runs()) {
            boolean typed = run.kind().equals("points") || run.kind().equals("pixels");
            if (typed && run.pixelCount() >= FEWEST_PIXELS) {
                warn(shape, run, problems);
            }
        }
    }

    private static void warn(Shape shape, Shape.Run run, Problems problems) {
        double far = FAR * medianStep(shape.pixels(), run.firstPixel(), run.pixelCount());
        int found = 0;
        for (int i = run.firstPixel() + 1; far > 0 && i < run.firstPixel() + run.pixelCount() - 1; i++) {
            if (standsApart(shape.pixels(), i, far) && found++ < MAX_SHOWN) {
                problems.warn(
                        run.location(),
                        "pixel " + (i + 1) + " of shape " + Quoted.of(shape.name())
                                + " stands apart from its neighbours, at " + shown(shape.pixels(), i),
                        "is a coordinate mistyped?");
            }
        }
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
