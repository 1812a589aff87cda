package org.duskloom.engine.sheet;

import java.io.IOException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.preview.Raster;

/** Draws a drawing as dots. Edges are smoothed by how much of a dot a stroke covers. */
public final class PngSheet {
    private final Raster raster;
    private final Area area;
    private final double dotsPerMm;

    private PngSheet(Area area, double dotsPerMm) {
        this.area = area;
        this.dotsPerMm = dotsPerMm;
        int width = (int) Math.ceil(area.width() * dotsPerMm);
        int height = (int) Math.ceil(area.height() * dotsPerMm);
        raster = new Raster(width, height, SheetColors.PAPER);
    }

    /**
     * Writes a picture and finishes the file.
     *
     * @throws IOException if the file cannot be written
     */
    public static void write(SheetPicture picture, StagedFile file) throws IOException {
        PngSheet sheet = new PngSheet(picture.drawing().area(), picture.dotsPerMm());
        picture.drawing().strokes().forEach(sheet::draw);
        int bodyRows = (int) Math.ceil(sheet.y(picture.drawing().bodyBottom()));
        FoldedRaster.of(sheet.raster, picture.rows(), bodyRows).writePng(file);
    }

    private void draw(Stroke stroke) {
        if (stroke instanceof Stroke.Circle circle) {
            drawCircle(circle);
        } else if (stroke instanceof Stroke.Line line) {
            drawLine(line);
        } else if (stroke instanceof Stroke.Arrow arrow) {
            drawArrow(arrow);
        } else if (stroke instanceof Stroke.Text text) {
            int scale = (int) Math.max(1, Math.rint(text.height() * dotsPerMm / PixelFont.CAPITAL_ROWS));
            int top = (int) Math.rint(y(text.y())) - PixelFont.CAPITAL_ROWS * scale;
            raster.text(text.words(), (int) Math.rint(x(text.x())), top, scale, text.color());
        }
    }

    private void drawCircle(Stroke.Circle circle) {
        double centreX = x(circle.x());
        double centreY = y(circle.y());
        double outer = (circle.radius() + circle.width() / 2) * dotsPerMm;
        double inner = circle.width() > 0 ? (circle.radius() - circle.width() / 2) * dotsPerMm : -1;
        each(
                centreX - outer,
                centreY - outer,
                centreX + outer,
                centreY + outer,
                (x, y) -> {
                    double distance = StrictMath.hypot(x - centreX, y - centreY);
                    return Math.min(covered(outer - distance), inner < 0 ? 1 : covered(distance - inner));
                },
                circle.color());
    }

    private void drawLine(Stroke.Line line) {
        double fromX = x(line.fromX());
        double fromY = y(line.fromY());
        double alongX = x(line.toX()) - fromX;
        double alongY = y(line.toY()) - fromY;
        double length = Math.max(1e-9, alongX * alongX + alongY * alongY);
        double half = Math.max(0.5, line.width() * dotsPerMm / 2);
        each(
                Math.min(fromX, fromX + alongX) - half,
                Math.min(fromY, fromY + alongY) - half,
                Math.max(fromX, fromX + alongX) + half,
                Math.max(fromY, fromY + alongY) + half,
                (x, y) -> {
                    double share = ((x - fromX) * alongX + (y - fromY) * alongY) / length;
                    double nearest = Math.max(0, Math.min(1, share));
                    double away = StrictMath.hypot(x - fromX - nearest * alongX, y - fromY - nearest * alongY);
                    return covered(half - away);
                },
                line.color());
    }

    private void drawArrow(Stroke.Arrow arrow) {
        double centreX = x(arrow.x());
        double centreY = y(arrow.y());
        double half = arrow.size() * dotsPerMm / 2;
        // A corner of the foot is as far from the middle, whichever way the arrow points.
        double reach = half * StrictMath.hypot(1, 2.0 / 3);
        each(
                centreX - reach,
                centreY - reach,
                centreX + reach,
                centreY + reach,
                (x, y) -> {
                    double along = (x - centreX) * arrow.directionX() - (y - centreY) * arrow.directionY();
                    double across = (x - centreX) * arrow.directionY() + (y - centreY) * arrow.directionX();
                    double room = (half - along) / 3 - Math.abs(across);
                    return along < -half ? 0 : covered(room);
                },
                arrow.color());
    }

    /** How much of a dot is covered whose middle is so far inside an edge. */
    private static double covered(double inside) {
        return Math.max(0, Math.min(1, inside + 0.5));
    }

    /** How much a stroke covers of a dot, 0 to 1. */
    private interface Coverage {
        double at(double x, double y);
    }

    private void each(double left, double top, double right, double bottom, Coverage coverage, int color) {
        int lastX = (int) Math.min(raster.width() - 1, Math.ceil(right));
        int lastY = (int) Math.min(raster.height() - 1, Math.ceil(bottom));
        for (int y = (int) Math.max(0, Math.floor(top)); y <= lastY; y++) {
            for (int x = (int) Math.max(0, Math.floor(left)); x <= lastX; x++) {
                double share = coverage.at(x + 0.5, y + 0.5);
                if (share > 0) {
                    raster.dot(x, y, mixed(raster.colourAt(x, y), color, share));
                }
            }
        }
    }

    private static int mixed(int under, int over, double share) {
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int below = under >> shift & 0xFF;
            int above = over >> shift & 0xFF;
            mixed |= (int) Math.rint(below + (above - below) * share) << shift;
        }
        return mixed;
    }

    private double x(double value) {
        return (value - area.left()) * dotsPerMm;
    }

    private double y(double value) {
        return (area.top() - value) * dotsPerMm;
    }
}
