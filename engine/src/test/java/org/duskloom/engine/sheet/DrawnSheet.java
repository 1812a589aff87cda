package org.duskloom.engine.sheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.label.Area;

/** A sheet as it was written, read back by the JDK and measured in millimetres of the drawing. */
final class DrawnSheet {
    private final int[] colors;
    private final int width;
    private final int height;
    private final Area area;
    private final double dotsPerMm;

    private DrawnSheet(BufferedImage image, Area area, double dotsPerMm) {
        this.width = image.getWidth();
        this.height = image.getHeight();
        this.colors = image.getRGB(0, 0, width, height, null, 0, width);
        this.area = area;
        this.dotsPerMm = dotsPerMm;
    }

    static DrawnSheet of(Path folder, SheetPicture picture) throws IOException {
        Path file = folder.resolve("sheet.png");
        PngSheet.write(picture, StagedFile.open(file, IfExists.REPLACE));
        return new DrawnSheet(ImageIO.read(file.toFile()), picture.drawing().area(), picture.dotsPerMm());
    }

    static DrawnSheet of(Path folder, double dotsPerMm, Area area, Stroke... strokes) throws IOException {
        Drawing drawing = new Drawing(area);
        for (Stroke stroke : strokes) {
            drawing.add(stroke);
        }
        return of(folder, new SheetPicture(drawing, dotsPerMm));
    }

    /** Where the ink of a stroke lies: how much, and the middle of it. */
    record Ink(double squareMm, double x, double y) {}

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** The colour of a dot, counted from the left and from the top. */
    int dot(int column, int row) {
        return colors[row * width + column] & 0xFFFFFF;
    }

    /** The colour at a place of the drawing. */
    int at(double x, double y) {
        return dot((int) ((x - area.left()) * dotsPerMm), (int) ((area.top() - y) * dotsPerMm));
    }

    /** What is darker than paper within an area, as if drawn in black: half a dot of grey is half a dot. */
    Ink ink(Area within) {
        double sum = 0;
        double sumX = 0;
        double sumY = 0;
        for (int row = 0; row < height(); row++) {
            for (int column = 0; column < width(); column++) {
                double x = area.left() + (column + 0.5) / dotsPerMm;
                double y = area.top() - (row + 0.5) / dotsPerMm;
                if (within.distanceTo(x, y) == 0) {
                    double dark = (0xFF - (dot(column, row) & 0xFF)) / 255.0;
                    sum += dark;
                    sumX += dark * x;
                    sumY += dark * y;
                }
            }
        }
        return new Ink(sum / dotsPerMm / dotsPerMm, sumX / sum, sumY / sum);
    }

    Ink ink() {
        return ink(area);
    }
}
