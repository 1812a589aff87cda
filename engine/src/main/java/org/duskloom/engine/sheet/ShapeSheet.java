package org.duskloom.engine.sheet;

import java.util.List;

/**
 * Draws one shape in one size: holes with numbers, the way of the wire with arrows, first and last pixel, parts by
 * colour and name. The letters are the largest with which the numbers have places beside their pixels; a few that have
 * none are led to their pixels by lines.
 */
public final class ShapeSheet {
    /** One number in so many may be led to its pixel before smaller letters are tried. */
    private static final int PIXELS_PER_LEADER = 40;

    /** Larger shapes are drawn once: nobody reads all of their numbers. */
    private static final int MOST_TRIED = 20_000;

    /** A shape so many times as wide as high is cut into rows if need be: a screen has room under it. */
    private static final double FLAT = 8;

    private static final int MOST_ROWS = 8;

    private ShapeSheet() {}

    /**
     * Draws a shape for printing.
     *
     * @param shape the shape, in the size in which it is built
     * @param millimetresPerUnit how long a unit of the display is
     * @param view from which side
     * @param options what the person chose
     */
    public static Drawing draw(ScaledShape shape, double millimetresPerUnit, View view, SheetOptions options) {
        Outline outline = Outline.of(shape, millimetresPerUnit, view, options);
        List<Double> sizes = LetterSizes.onPaper(HoleSpacing.median(outline.x(), outline.y()));
        ShapeDrawing best = ShapeDrawing.of(outline, sizes.get(0));
        for (double size : sizes) {
            if (suits(best)) {
                break;
            }
            best = better(best, ShapeDrawing.of(outline, size));
        }
        return best.finished();
    }

    /** Draws a shape for looking at it; what is meant by the parameters is the same. */
    public static SheetPicture picture(ScaledShape shape, double millimetresPerUnit, View view, SheetOptions options) {
        Outline outline = Outline.of(shape, millimetresPerUnit, view, options);
        double longer = Math.max(outline.outerBox().width(), outline.outerBox().height());
        boolean isFlat = outline.outerBox().width() > FLAT * outline.outerBox().height();
        List<LetterSizes.ForPicture> sizes = LetterSizes.onPicture(longer, isFlat ? MOST_ROWS : 1);
        ShapeDrawing best = ShapeDrawing.of(outline, sizes.get(0).letterMm());
        double dotsPerMm = sizes.get(0).dotsPerMm();
        for (LetterSizes.ForPicture size : sizes) {
            if (suits(best)) {
                break;
            }
            ShapeDrawing next = ShapeDrawing.of(outline, size.letterMm());
            dotsPerMm = better(best, next) == next ? size.dotsPerMm() : dotsPerMm;
            best = better(best, next);
        }
        int rows = isFlat ? LetterSizes.rows(longer, dotsPerMm) : 1;
        return new SheetPicture(best.finished(), dotsPerMm, rows);
    }

    private static boolean suits(ShapeDrawing drawing) {
        return drawing.pixels() > MOST_TRIED || drawing.numbersAway() <= drawing.numbers() / PIXELS_PER_LEADER;
    }

    private static ShapeDrawing better(ShapeDrawing best, ShapeDrawing next) {
        return next.numbersAway() < best.numbersAway() ? next : best;
    }
}
