package org.duskloom.engine.display.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.duskloom.engine.problem.Location;
import org.joml.Vector2dc;

/**
 * A circle that is drawn.
 *
 * @param x on the page, in millimetres
 * @param y down on the page, in millimetres
 * @param place where it stands in the file
 * @param part the path of its part; empty for none
 * @param chosen whether it is in the group of the pixels
 */
record SvgCircle(double x, double y, Location place, String part, boolean chosen) {
    /** Finer than any builder measures, and coarser than the rounding of the way from the drawing. */
    private static final double STEPS_PER_MM = 1e6;

    /** Circles in wiring order as pixels. */
    static SvgPixels pixels(List<SvgCircle> circles, Vector2dc zero) {
        Map<String, List<Integer>> byPath = new TreeMap<>();
        for (int pixel = 0; pixel < circles.size(); pixel++) {
            String path = circles.get(pixel).part();
            for (int end = path.length(); end > 0; end = path.lastIndexOf('/', end - 1)) {
                byPath.computeIfAbsent(path.substring(0, end), unseen -> new ArrayList<>())
                        .add(pixel);
            }
        }
        TreeMap<String, int[]> parts = new TreeMap<>();
        byPath.forEach((path, pixels) ->
                parts.put(path, pixels.stream().mapToInt(Integer::intValue).toArray()));
        return new SvgPixels(
                circles.stream()
                        .mapToDouble(circle -> rounded(circle.x() - zero.x()))
                        .toArray(),
                circles.stream()
                        .mapToDouble(circle -> rounded(zero.y() - circle.y()))
                        .toArray(),
                circles.stream().map(SvgCircle::place).toList(),
                parts);
    }

    private static double rounded(double millimetres) {
        double steps = Math.rint(millimetres * STEPS_PER_MM);
        return steps == 0 ? 0 : steps / STEPS_PER_MM;
    }
}
