package org.duskloom.effects.lettering;

import java.util.BitSet;

/**
 * A letter in dots.
 *
 * @param advance from the pen's place for this letter to that for the next
 * @param left first column of the dots, from the pen
 * @param top first row of the dots, from the top of the line; may be below 0
 * @param width columns of dots
 * @param height rows of dots
 * @param ink which dots are lit, row by row
 */
record Glyph(int advance, int left, int top, int width, int height, BitSet ink) {

    /** A frame, for a letter that a font does not have. */
    static Glyph box(int top, int height, int width, int gap) {
        BitSet ink = new BitSet();
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                boolean edge = row == 0 || column == 0 || row == height - 1 || column == width - 1;
                ink.set(row * width + column, edge);
            }
        }
        return new Glyph(width + gap, 0, top, width, height, ink);
    }

    /** Where the letter ends, from the pen: behind its last column, or at the next letter if it has no dots. */
    int right() {
        return ink.isEmpty() ? advance : left + width;
    }
}
