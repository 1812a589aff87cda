package org.duskloom.engine.sheet;

/**
 * A drawing to look at on a screen.
 *
 * @param drawing what is drawn
 * @param dotsPerMm the scale, at which its letters are whole multiples of the dot font
 */
public record SheetPicture(Drawing drawing, double dotsPerMm) {}
