package org.duskloom.effects.lettering;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A line of text in dots, from the first dot of its first letter to the last dot of its last one.
 *
 * @param columns at least 1
 * @param rows at least 1
 * @param capitalTop the row in which capitals begin
 * @param capitalRows rows of a capital
 * @param ink which dots are lit, row by row
 */
record DotLine(int columns, int rows, int capitalTop, int capitalRows, BitSet ink) {

    /**
     * Sets a line.
     *
     * @param spacing dots added between two letters; may be below 0
     */
    static DotLine of(String text, Alphabet alphabet, int spacing) {
        List<Glyph> glyphs = text.codePoints().mapToObj(alphabet::glyph).toList();
        List<Integer> pens = new ArrayList<>();
        int pen = 0;
        int left = Integer.MAX_VALUE;
        int right = Integer.MIN_VALUE;
        int top = 0;
        int bottom = alphabet.rows();
        for (Glyph glyph : glyphs) {
            pens.add(pen);
            left = Math.min(left, pen + (glyph.ink().isEmpty() ? 0 : glyph.left()));
            right = Math.max(right, pen + glyph.right());
            top = Math.min(top, glyph.top());
            bottom = Math.max(bottom, glyph.top() + glyph.height());
            pen += glyph.advance() + spacing;
        }
        int columns = Math.max(1, right - left);
        BitSet ink = new BitSet();
        for (int i = 0; i < pens.size(); i++) {
            draw(glyphs.get(i), pens.get(i) - left, -top, columns, ink);
        }
        return new DotLine(
                columns, Math.max(1, bottom - top), alphabet.capitalTop() - top, alphabet.capitalRows(), ink);
    }

    private static void draw(Glyph glyph, int pen, int down, int columns, BitSet ink) {
        for (int dot = glyph.ink().nextSetBit(0); dot >= 0; dot = glyph.ink().nextSetBit(dot + 1)) {
            int row = down + glyph.top() + dot / glyph.width();
            ink.set(row * columns + pen + glyph.left() + dot % glyph.width());
        }
    }

    boolean isLit(int column, int row) {
        return column >= 0 && column < columns && row >= 0 && row < rows && ink.get(row * columns + column);
    }
}
