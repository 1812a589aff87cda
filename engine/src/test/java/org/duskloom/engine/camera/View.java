package org.duskloom.engine.camera;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;

/** How the lights lie in a picture. */
final class View {
    private final double[][] seen;

    /** @param isSeen which lights count */
    View(Positions lights, IntPredicate isSeen, Pinhole pinhole) {
        seen = IntStream.range(0, lights.size())
                .filter(isSeen)
                .mapToObj(i -> pinhole.place(lights.x(i), lights.y(i), lights.z(i)))
                .toArray(double[][]::new);
    }

    /** The median distance of a light to the nearest other one. */
    double typicalDistance() {
        double[] nearest = new double[seen.length];
        double[][] byX = seen.clone();
        Arrays.sort(byX, (a, b) -> Double.compare(a[0], b[0]));
        for (int i = 0; i < byX.length; i++) {
            double least = Double.POSITIVE_INFINITY;
            for (int step = -1; step <= 1; step += 2) {
                for (int j = i + step; j >= 0 && j < byX.length && Math.abs(byX[j][0] - byX[i][0]) < least; j += step) {
                    least = Math.min(least, Math.hypot(byX[j][0] - byX[i][0], byX[j][1] - byX[i][1]));
                }
            }
            nearest[i] = least;
        }
        Arrays.sort(nearest);
        return nearest[nearest.length / 2];
    }

    /** How far from the middle of the picture the farthest one is, to the left or right. */
    double farthestAcross() {
        return Arrays.stream(seen).mapToDouble(at -> Math.abs(at[0])).max().orElse(0);
    }

    /** The same, up or down. */
    double farthestDown() {
        return Arrays.stream(seen).mapToDouble(at -> Math.abs(at[1])).max().orElse(0);
    }
}
