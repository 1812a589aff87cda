package org.duskloom.engine.preview;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.output.PropSpan;

/**
 * Names of props in a panel: each under, over or beside its prop, where it covers the fewest pixels; left out where it
 * would cover another name.
 */
final class PropLabels {
    private static final int ROWS = PixelFont.CAPITAL_ROWS + 2;
    private static final int CLEAR = 3;

    private final List<Label> placed = new ArrayList<>();
    private final BitSet pixels = new BitSet();
    private final int panelWidth;
    private final int panelHeight;

    /** A name, and where its capitals begin. */
    record Label(String name, int left, int top, int width) {
        boolean overlaps(Label other) {
            return left < other.left + other.width + CLEAR
                    && other.left < left + width + CLEAR
                    && top < other.top + ROWS + 1
                    && other.top < top + ROWS + 1;
        }
    }

    PropLabels(PreviewScene scene, StageView view, double dotRadius, int panelWidth, int panelHeight) {
        this.panelWidth = panelWidth;
        this.panelHeight = panelHeight;
        for (int i = 0; i < scene.pixelCount(); i++) {
            pixels.set((int) view.panelY(scene.y()[i]) * panelWidth + (int) view.panelX(scene.x()[i]));
        }
        for (PropSpan prop : scene.props()) {
            if (prop.pixelCount() > 0) {
                place(prop, scene, view, (int) Math.ceil(dotRadius) + CLEAR);
            }
        }
    }

    /** Writes the names on a panel whose upper left corner is given. */
    void draw(Raster sheet, int panelLeft, int panelTop) {
        for (Label label : placed) {
            sheet.text(label.name(), panelLeft + label.left(), panelTop + label.top(), 1, Ink.QUIET);
        }
    }

    /** The names that found a place. */
    List<Label> placed() {
        return List.copyOf(placed);
    }

    private void place(PropSpan prop, PreviewScene scene, StageView view, int distance) {
        int[] box = panelBox(prop, scene, view);
        String name = PixelFont.standard().fitted(prop.name(), panelWidth);
        int width = PixelFont.standard().width(name);
        int middleX = (box[0] + box[2]) / 2 - width / 2;
        int middleY = (box[1] + box[3]) / 2 - PixelFont.CAPITAL_ROWS / 2;
        int under = box[3] + distance;
        int over = box[1] - distance - PixelFont.CAPITAL_ROWS;
        int right = box[2] + distance;
        int left = box[0] - distance - width;
        Stream.of(
                        new Label(name, middleX, under, width),
                        new Label(name, middleX, over, width),
                        new Label(name, right, middleY, width),
                        new Label(name, left, middleY, width))
                .filter(this::isFree)
                .min(Comparator.comparingInt(this::coveredPixels))
                .ifPresent(placed::add);
    }

    private int coveredPixels(Label label) {
        int covered = 0;
        for (int y = Math.max(0, label.top() - CLEAR); y < label.top() + ROWS; y++) {
            int row = y * panelWidth;
            covered += pixels.get(row + label.left(), row + label.left() + label.width())
                    .cardinality();
        }
        return covered;
    }

    private boolean isFree(Label label) {
        return label.left() >= 0
                && label.left() + label.width() <= panelWidth
                && label.top() >= 0
                && label.top() + ROWS <= panelHeight
                && placed.stream().noneMatch(label::overlaps);
    }

    /** Left, top, right and bottom of the middles of a prop's pixels. */
    private static int[] panelBox(PropSpan prop, PreviewScene scene, StageView view) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (int i = prop.firstPixel(); i < prop.firstPixel() + prop.pixelCount(); i++) {
            double x = view.panelX(scene.x()[i]);
            double y = view.panelY(scene.y()[i]);
            box[0] = Math.min(box[0], x);
            box[1] = Math.min(box[1], y);
            box[2] = Math.max(box[2], x);
            box[3] = Math.max(box[3], y);
        }
        return new int[] {(int) box[0], (int) box[1], (int) box[2], (int) box[3]};
    }
}
