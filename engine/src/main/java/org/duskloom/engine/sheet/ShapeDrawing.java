package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.label.LabelFinder;
import org.duskloom.engine.label.LabelPlace;
import org.duskloom.engine.label.LabelWish;
import org.duskloom.engine.label.Span;

/** A shape drawn with letters of one size. */
final class ShapeDrawing {
    /** Beyond these, not every pixel is numbered: the numbers would be all that one sees. */
    private static final int MOST_NUMBERED = 400;

    private final Outline outline;
    private final double radius;
    private final double letters;
    private final LabelFinder labels;
    private final Drawing drawing;
    private final PartColors colors;
    private int numbers;
    private final List<Label> homeless = new ArrayList<>();

    /** The number of a pixel. */
    private record Label(int pixel, String words, int color) {}

    private ShapeDrawing(Outline outline, double letters) {
        this.outline = outline;
        this.letters = letters;
        this.radius = outline.holeRadius();
        this.labels = new LabelFinder(outline.field(), radius, letters);
        this.colors = new PartColors(outline.scaled().shape().parts(), outline.count());
        this.drawing = new Drawing(outline.outerBox().grown(2 * letters));
    }

    /** @param letters height of capitals, in millimetres */
    static ShapeDrawing of(Outline outline, double letters) {
        ShapeDrawing sheet = new ShapeDrawing(outline, letters);
        sheet.drawWire();
        sheet.drawHoles();
        sheet.drawNumbers();
        return sheet;
    }

    /** The whole drawing, to be asked for once: leaders take long to find, and most sizes of letters are only tried. */
    Drawing finished() {
        homeless.forEach(label -> labels.led(wish(label)).ifPresent(found -> draw(label, found)));
        ShapeFoot.draw(drawing, outline, letters, colors);
        return drawing;
    }

    int pixels() {
        return outline.count();
    }

    /** How many pixels are numbered. */
    int numbers() {
        return numbers;
    }

    /** How many of the numbers do not stand beside their pixels. */
    int numbersAway() {
        return homeless.size();
    }

    private double x(int pixel) {
        return outline.x()[pixel];
    }

    private double y(int pixel) {
        return outline.y()[pixel];
    }

    private void drawWire() {
        for (int i = 1; i < outline.count(); i++) {
            double length = StrictMath.hypot(x(i) - x(i - 1), y(i) - y(i - 1));
            drawing.add(new Stroke.Line(x(i - 1), y(i - 1), x(i), y(i), letters / 8, SheetColors.WIRE));
            labels.takeLine(x(i - 1), y(i - 1), x(i), y(i));
            if (length > 2 * radius + letters / 2) {
                double directionX = (x(i) - x(i - 1)) / length;
                double directionY = (y(i) - y(i - 1)) / length;
                double middleX = (x(i) + x(i - 1)) / 2;
                double middleY = (y(i) + y(i - 1)) / 2;
                double size = Math.min(0.8 * letters, length / 3);
                drawing.add(new Stroke.Arrow(middleX, middleY, directionX, directionY, size, SheetColors.QUIET));
                labels.take(Area.round(middleX, middleY, size / 2));
            }
        }
    }

    private void drawHoles() {
        double width = rim();
        for (int i = 0; i < outline.count(); i++) {
            drawing.add(new Stroke.Circle(x(i), y(i), radius, 0, SheetColors.PAPER));
            drawing.addPixel(new Stroke.Circle(x(i), y(i), radius, width, colors.of(i)));
            drawing.add(new Stroke.Circle(x(i), y(i), colors.isShared(i) ? radius / 2 : width / 2, 0, colors.inner(i)));
        }
        mark(outline.count() - 1, SheetColors.LAST);
        mark(0, SheetColors.FIRST);
    }

    private double rim() {
        return Math.min(radius / 3, letters / 5);
    }

    private double markedRadius() {
        return radius + 3 * rim();
    }

    private void mark(int pixel, int color) {
        drawing.add(new Stroke.Circle(x(pixel), y(pixel), radius + 2 * rim(), 2 * rim(), color));
        double outer = markedRadius();
        // Three rectangles cover about what the ring does.
        for (double share : new double[] {0.38, 0.71, 0.92}) {
            double other = Math.sqrt(1 - share * share);
            labels.take(Area.around(x(pixel), y(pixel), 2 * outer * share, 2 * outer * other));
        }
    }

    private void drawNumbers() {
        int last = outline.count() - 1;
        List<Label> all = new ArrayList<>();
        all.add(new Label(0, "1 IN", SheetColors.FIRST));
        if (last > 0) {
            all.add(new Label(last, (last + 1) + " OUT", SheetColors.LAST));
        }
        int every = 1;
        while (outline.count() / every > MOST_NUMBERED) {
            every = every == 1 ? 5 : 2 * every;
        }
        for (int i = 1; i < last; i++) {
            if ((i + 1) % every == 0) {
                all.add(new Label(i, String.valueOf(i + 1), SheetColors.INK));
            }
        }
        numbers = all.size();
        for (Label label : all) {
            Optional<LabelPlace> place = labels.beside(wish(label));
            place.ifPresentOrElse(found -> draw(label, found), () -> homeless.add(label));
        }
    }

    private LabelWish wish(Label label) {
        boolean marked = label.pixel() == 0 || label.pixel() == outline.count() - 1;
        double clear = (marked ? markedRadius() : radius) + letters / 4;
        double width = Stroke.Text.width(label.words(), letters);
        return new LabelWish(Span.of(label.pixel()), width, letters, clear, outline.outwardTurns(label.pixel()));
    }

    private void draw(Label label, LabelPlace place) {
        place.leader().ifPresent(line -> drawing.add(Stroke.Line.of(line, letters / 14, label.color())));
        drawing.add(
                new Stroke.Text(label.words(), place.area().left(), place.area().bottom(), letters, label.color()));
        drawing.widen(place.area().grown(letters));
    }
}
