package org.duskloom.engine.sheet;

/**
 * A drawing to look at on a screen.
 *
 * @param drawing what is drawn
 * @param dotsPerMm the scale, at which its letters are whole multiples of the dot font
 * @param rows into how many rows under each other it is cut, so that what is long and flat can be read; at least 1
 */
public record SheetPicture(Drawing drawing, double dotsPerMm, int rows) {
    /** A picture in one piece. */
    SheetPicture(Drawing drawing, double dotsPerMm) {
        this(drawing, dotsPerMm, 1);
    }
}
