package org.duskloom.engine.preview;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.PropSpan;

/** An allotment garden on midsummer night: daisies on an arch, a fence, a trellis and a pond. Millimetres. */
final class Garden {
    static final int FRAMES_PER_SECOND = 40;

    private final List<double[]> points = new ArrayList<>();
    private final List<PropSpan> props = new ArrayList<>();

    static Garden whole() {
        Garden garden = new Garden();
        for (int k = 0; k < 14; k++) {
            double turn = StrictMath.PI * (13 - k) / 13;
            garden.daisy("daisy-" + (k + 1), 3000 * StrictMath.cos(turn), 1000 + 2600 * StrictMath.sin(turn), 220);
        }
        garden.grid("trellis", -900, 500, 13, 15, 150);
        garden.line("fence left", -5200, 300, -3600, 300, 40);
        garden.line("fence right", 3600, 300, 5200, 300, 40);
        garden.pond("pond", 0, -300, 2400, 420, 120);
        return garden;
    }

    void daisy(String name, double x, double y, double radius) {
        begin(name);
        ring(x, y, radius, radius, 24);
        ring(x, y, radius * 0.72, radius * 0.72, 18);
        ring(x, y, radius * 0.45, radius * 0.45, 12);
        ring(x, y, radius * 0.2, radius * 0.2, 6);
        points.add(new double[] {x, y});
        end();
    }

    void pond(String name, double x, double y, double radiusX, double radiusY, int count) {
        begin(name);
        ring(x, y, radiusX, radiusY, count);
        end();
    }

    void line(String name, double x0, double y0, double x1, double y1, int count) {
        begin(name);
        for (int i = 0; i < count; i++) {
            double share = count == 1 ? 0 : i / (count - 1.0);
            points.add(new double[] {x0 + share * (x1 - x0), y0 + share * (y1 - y0)});
        }
        end();
    }

    void grid(String name, double x, double y, int columns, int rows, double step) {
        begin(name);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                points.add(new double[] {x + column * step, y + row * step});
            }
        }
        end();
    }

    PreviewScene scene(String title) {
        return new PreviewScene(
                title,
                points.stream().mapToDouble(point -> point[0]).toArray(),
                points.stream().mapToDouble(point -> point[1]).toArray(),
                props,
                frame -> frame / (double) FRAMES_PER_SECOND);
    }

    private String name = "";
    private int first;

    private void begin(String propName) {
        name = propName;
        first = points.size();
    }

    private void end() {
        props.add(new PropSpan(name, first, points.size() - first));
    }

    private void ring(double x, double y, double radiusX, double radiusY, int count) {
        for (int i = 0; i < count; i++) {
            double turn = 2 * StrictMath.PI * i / count;
            points.add(new double[] {x + radiusX * StrictMath.cos(turn), y + radiusY * StrictMath.sin(turn)});
        }
    }
}
