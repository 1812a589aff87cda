package org.duskloom.engine.sheet;

import java.util.Arrays;
import java.util.Locale;
import org.duskloom.engine.display.Shape;

/** Draws one shape: holes with numbers, the way of the wire with arrows, first and last pixel, parts by colour and name. */
public final class ShapeSheet {
    /** Beyond these, not every pixel is numbered: the numbers would be all that one sees. */
    private static final int MOST_NUMBERED = 400;

    private static final double LARGEST_LETTERS_MM = 8;
    private static final double LETTERS_OF_SPACING = 0.22;
    private static final double BAR_MM = 100;

    private final Shape shape;
    private final double[] x;
    private final double[] y;
    private final double radius;
    private final double letters;
    private final Labels labels;
    private final Drawing drawing;
    private final PartColors colors;

    private ShapeSheet(Shape shape, double millimetresPerUnit, View view, SheetOptions options, double letters) {
        this.shape = shape;
        int count = shape.pixelCount();
        x = new double[count];
        y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = view.sign() * shape.pixels().x(i) * millimetresPerUnit;
            y[i] = shape.pixels().y(i) * millimetresPerUnit;
        }
        double spacing = Spacing.median(x, y);
        this.letters =
                letters > 0 ? letters : Math.min(LARGEST_LETTERS_MM, Math.max(1.5, LETTERS_OF_SPACING * spacing));
        radius = options.holeMm() / 2;
        labels = new Labels(4 * this.letters);
        colors = new PartColors(shape.parts(), count);
        Area box = new Area(least(x), least(y), greatest(x), greatest(y));
        drawing = new Drawing(box.grown(radius + 6 * this.letters));
    }

    /**
     * Draws a shape.
     *
     * @param shape the shape
     * @param millimetresPerUnit how long a unit of the display is
     * @param view from which side
     * @param options what the person chose
     * @param letterMm height of capitals, in millimetres; 0 chooses one that suits the spacing of the pixels
     */
    public static Drawing draw(
            Shape shape, double millimetresPerUnit, View view, SheetOptions options, double letterMm) {
        ShapeSheet sheet = new ShapeSheet(shape, millimetresPerUnit, view, options, letterMm);
        sheet.drawWire();
        sheet.drawHoles();
        sheet.drawNumbers();
        sheet.drawFoot(view);
        return sheet.drawing;
    }

    private void drawWire() {
        for (int i = 1; i < x.length; i++) {
            double length = StrictMath.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
            Stroke.Line line = new Stroke.Line(x[i - 1], y[i - 1], x[i], y[i], letters / 8, SheetColors.WIRE);
            drawing.add(line);
            labels.takeLine(line);
            if (length > 2 * radius + letters / 2) {
                double directionX = (x[i] - x[i - 1]) / length;
                double directionY = (y[i] - y[i - 1]) / length;
                double middleX = (x[i] + x[i - 1]) / 2;
                double middleY = (y[i] + y[i - 1]) / 2;
                double size = Math.min(0.8 * letters, length / 3);
                drawing.add(new Stroke.Arrow(middleX, middleY, directionX, directionY, size, SheetColors.QUIET));
                labels.take(Area.round(middleX, middleY, size / 2));
            }
        }
    }

    private void drawHoles() {
        double width = Math.min(radius / 3, letters / 5);
        for (int i = 0; i < x.length; i++) {
            drawing.add(new Stroke.Circle(x[i], y[i], radius, 0, SheetColors.PAPER));
            drawing.add(new Stroke.Circle(x[i], y[i], radius, width, colors.of(i)));
            drawing.add(new Stroke.Circle(x[i], y[i], colors.isShared(i) ? radius / 2 : width / 2, 0, colors.inner(i)));
            labels.take(Area.round(x[i], y[i], radius));
        }
        int last = x.length - 1;
        mark(last, SheetColors.LAST, width);
        mark(0, SheetColors.FIRST, width);
    }

    private void mark(int pixel, int color, double width) {
        double outer = radius + 2 * width;
        drawing.add(new Stroke.Circle(x[pixel], y[pixel], outer, 2 * width, color));
        labels.take(Area.round(x[pixel], y[pixel], outer + width));
    }

    private void drawNumbers() {
        int last = x.length - 1;
        number(0, "1 IN", SheetColors.FIRST);
        if (last > 0) {
            number(last, (last + 1) + " OUT", SheetColors.LAST);
        }
        int every = 1;
        while (x.length / every > MOST_NUMBERED) {
            every = every == 1 ? 5 : 2 * every;
        }
        for (int i = 1; i < last; i++) {
            if (every == 1 || (i + 1) % every == 0) {
                number(i, String.valueOf(i + 1), SheetColors.INK);
            }
        }
    }

    private void number(int pixel, String words, int color) {
        double clear = radius + letters / 3;
        labels.place(words, x[pixel], y[pixel], letters, clear, clear, outward(pixel), color)
                .ifPresent(text -> {
                    drawing.add(text);
                    drawing.widen(text.area().grown(letters));
                });
    }

    /** The direction away from the wire's neighbours, or from the middle of the shape where they balance. */
    private double outward(int pixel) {
        int before = Math.max(0, pixel - 1);
        int after = Math.min(x.length - 1, pixel + 1);
        double awayX = 2 * x[pixel] - x[before] - x[after];
        double awayY = 2 * y[pixel] - y[before] - y[after];
        double middleX = (drawing.area().left() + drawing.area().right()) / 2;
        double middleY = (drawing.area().bottom() + drawing.area().top()) / 2;
        if (StrictMath.hypot(awayX, awayY) < radius / 4) {
            awayX = x[pixel] - middleX;
            awayY = y[pixel] - middleY;
        }
        return awayX == 0 && awayY == 0 ? 0.25 : StrictMath.atan2(awayY, awayX) / (2 * Math.PI);
    }

    private void drawFoot(View view) {
        Area area = drawing.area();
        double line = 2 * letters;
        double left = area.left() + letters;
        double foot = area.bottom() - line;
        String side = view == View.FRONT ? "from the front" : "from the back, as you wire it";
        foot = text(shape.name() + ", " + side, left, foot, SheetColors.INK);
        foot = text(size(), left, foot, SheetColors.QUIET);
        drawing.add(new Stroke.Line(left, foot, left + BAR_MM, foot, letters / 6, SheetColors.INK));
        drawing.add(new Stroke.Line(left, foot, left, foot + letters, letters / 6, SheetColors.INK));
        drawing.add(new Stroke.Line(left + BAR_MM, foot, left + BAR_MM, foot + letters, letters / 6, SheetColors.INK));
        drawing.add(new Stroke.Text("100 mm", left + BAR_MM + letters, foot, letters, SheetColors.INK));
        drawing.widen(new Area(left, foot, left + BAR_MM + 8 * letters, foot));
        foot -= line;
        for (PartColors.Entry entry : colors.entries()) {
            drawing.add(new Stroke.Circle(left + letters / 2, foot + letters / 2, letters / 2, 0, entry.color()));
            foot = text(entry.words(), left + 2 * letters, foot, SheetColors.INK);
        }
        drawing.widen(new Area(area.left(), foot, area.right(), area.top()));
    }

    private double text(String words, double left, double foot, int color) {
        Stroke.Text text = new Stroke.Text(words, left, foot, letters, color);
        drawing.add(text);
        drawing.widen(new Area(left, foot, left + text.width() + letters, foot + letters));
        return foot - 2 * letters;
    }

    private String size() {
        return String.format(
                Locale.ROOT,
                "%d pixel%s, %.0f x %.0f mm, holes %.1f mm",
                x.length,
                x.length == 1 ? "" : "s",
                greatest(x) - least(x),
                greatest(y) - least(y),
                2 * radius);
    }

    private static double least(double[] values) {
        return Arrays.stream(values).min().orElseThrow();
    }

    private static double greatest(double[] values) {
        return Arrays.stream(values).max().orElseThrow();
    }
}
