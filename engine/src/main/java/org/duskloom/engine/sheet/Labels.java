package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds places for labels where they cover nothing: neither what was drawn nor each other. What is taken is kept in a grid,
 * so that a sheet of thousands of pixels is laid out quickly.
 */
final class Labels {
    private static final int DIRECTIONS = 16;
    private static final double[] DISTANCES = {1, 1.5, 2.2};

    private final double cell;
    private final Map<Long, List<Area>> taken = new HashMap<>();

    /** @param cell side of a grid cell: about the size of a label */
    Labels(double cell) {
        this.cell = cell;
    }

    /** Marks an area as taken. */
    void take(Area area) {
        for (long column = index(area.left()); column <= index(area.right()); column++) {
            for (long row = index(area.bottom()); row <= index(area.top()); row++) {
                taken.computeIfAbsent(column << 32 ^ row & 0xFFFFFFFFL, unseen -> new ArrayList<>())
                        .add(area);
            }
        }
    }

    /** Marks a line as taken, by small squares along it. */
    void takeLine(Stroke.Line line) {
        double length = StrictMath.hypot(line.toX() - line.fromX(), line.toY() - line.fromY());
        int steps = (int) Math.min(1000, Math.ceil(length / (cell / 4)) + 1);
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            double x = line.fromX() + (line.toX() - line.fromX()) * share;
            double y = line.fromY() + (line.toY() - line.fromY()) * share;
            take(Area.round(x, y, cell / 16));
        }
    }

    /**
     * A free place near a point, taken from then on; nothing if there is none.
     *
     * @param words what is written
     * @param height of its capitals
     * @param clearX how far from the point the label begins, sideways
     * @param clearY how far from the point the label begins, up or down
     * @param firstTurns the direction that is tried first, in turns counter-clockwise from the right
     */
    Optional<Stroke.Text> place(
            String words,
            double x,
            double y,
            double height,
            double clearX,
            double clearY,
            double firstTurns,
            int color) {
        double width = Stroke.Text.width(words, height);
        for (double distance : DISTANCES) {
            for (int i = 0; i < DIRECTIONS; i++) {
                int side = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
                double angle = 2 * Math.PI * (firstTurns + (double) side / DIRECTIONS);
                double directionX = StrictMath.cos(angle);
                double directionY = StrictMath.sin(angle);
                double middleX = x + directionX * (clearX * distance + width / 2);
                double middleY = y + directionY * (clearY * distance + height / 2);
                Area area =
                        new Area(middleX - width / 2, middleY - height / 2, middleX + width / 2, middleY + height / 2);
                if (isFree(area)) {
                    take(area.grown(height * 0.1));
                    return Optional.of(new Stroke.Text(words, area.left(), area.bottom(), height, color));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether nothing taken meets the area. */
    boolean isFree(Area area) {
        for (long column = index(area.left()); column <= index(area.right()); column++) {
            for (long row = index(area.bottom()); row <= index(area.top()); row++) {
                for (Area other : taken.getOrDefault(column << 32 ^ row & 0xFFFFFFFFL, List.of())) {
                    if (other.meets(area)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private long index(double value) {
        return (long) Math.floor(value / cell);
    }
}
