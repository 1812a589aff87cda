package org.duskloom.engine.survey;

import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.duskloom.engine.map.Positions;

/** The rows of one prop while the file is read. */
final class MeasuredRows {
    private final TreeMap<Integer, Row> byPixel = new TreeMap<>();

    private record Row(int start, double x, double y, double z) {}

    /** Keeps a row; the start of the first one of the same pixel if there is one, which stays. */
    OptionalInt add(int pixel, int rowStart, double x, double y, double z) {
        Row first = byPixel.putIfAbsent(pixel, new Row(rowStart, x, y, z));
        return first == null ? OptionalInt.empty() : OptionalInt.of(first.start);
    }

    MeasuredProp inOrder(int propIndex) {
        int[] pixels = new int[byPixel.size()];
        double[][] places = new double[3][pixels.length];
        int next = 0;
        for (Map.Entry<Integer, Row> entry : byPixel.entrySet()) {
            pixels[next] = entry.getKey();
            places[0][next] = entry.getValue().x;
            places[1][next] = entry.getValue().y;
            places[2][next++] = entry.getValue().z;
        }
        return new MeasuredProp(propIndex, pixels, new Positions(places[0], places[1], places[2]));
    }
}
