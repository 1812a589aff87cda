package org.duskloom.effects.lettering;

import java.util.BitSet;
import org.duskloom.engine.font.PixelFont;

/** The project's own font. */
final class OwnAlphabet implements Alphabet {
    private static final int GAP = 1;

    @Override
    public int rows() {
        return PixelFont.ROWS;
    }

    @Override
    public int capitalTop() {
        return PixelFont.CAPITAL_ROW;
    }

    @Override
    public int capitalRows() {
        return PixelFont.CAPITAL_ROWS;
    }

    @Override
    public boolean has(int codePoint) {
        return PixelFont.standard().has(codePoint);
    }

    @Override
    public Glyph glyph(int codePoint) {
        String letter = Character.toString(codePoint);
        int width = PixelFont.standard().width(letter);
        BitSet ink = new BitSet();
        PixelFont.standard().draw(letter, (column, row) -> ink.set(row * width + column));
        return new Glyph(width + GAP, 0, 0, width, PixelFont.ROWS, ink);
    }
}
