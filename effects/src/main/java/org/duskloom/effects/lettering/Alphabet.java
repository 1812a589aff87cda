package org.duskloom.effects.lettering;

/** The letters of a font. Immutable. */
interface Alphabet {
    /** Rows of a line. */
    int rows();

    /** The row in which capitals begin. */
    int capitalTop();

    /** Rows of a capital, at least 1. */
    int capitalRows();

    /** Whether the font has a letter for a Unicode code point. */
    boolean has(int codePoint);

    /** The letter of a Unicode code point; a box if the font does not have it. */
    Glyph glyph(int codePoint);
}
