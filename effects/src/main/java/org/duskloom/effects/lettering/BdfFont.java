package org.duskloom.effects.lettering;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** A font from a BDF file. */
final class BdfFont implements Alphabet {
    private final BdfBox box;
    private final Map<Integer, BdfGlyph> glyphs;
    private final int capitalRows;

    /**
     * A font.
     *
     * @param box holds every letter
     * @param glyphs by code point
     * @param capitalHeight what the file says of the height of capitals
     */
    BdfFont(BdfBox box, Map<Integer, BdfGlyph> glyphs, OptionalInt capitalHeight) {
        this.box = box;
        this.glyphs = Map.copyOf(glyphs);
        int drawn = Stream.of('H', 'X', '0')
                .flatMap(letter -> Optional.ofNullable(glyphs.get((int) letter)).stream())
                .map(glyph -> glyph.box().top())
                .findFirst()
                .orElse(box.top());
        capitalRows = Math.max(1, capitalHeight.orElse(drawn));
    }

    @Override
    public int rows() {
        return box.height();
    }

    @Override
    public int capitalTop() {
        return box.top() - capitalRows;
    }

    @Override
    public int capitalRows() {
        return capitalRows;
    }

    @Override
    public boolean has(int codePoint) {
        return glyphs.containsKey(codePoint);
    }

    @Override
    public Glyph glyph(int codePoint) {
        BdfGlyph glyph = glyphs.get(codePoint);
        if (glyph == null) {
            return Glyph.box(capitalTop(), capitalRows, Math.max(1, capitalRows * 5 / 7), Math.max(1, capitalRows / 7));
        }
        BdfBox own = glyph.box();
        return new Glyph(glyph.advance(), own.left(), box.top() - own.top(), own.width(), own.height(), glyph.ink());
    }
}
