package org.duskloom.engine.css;

import org.duskloom.engine.text.Quoted;

/**
 * One value between the brackets of a CSS function.
 *
 * @param kind what sort of value it is
 * @param number the number in front of the sign or unit (50 for {@code 50%}), finite; 0 for words and the slash
 * @param unit the unit of a {@link Kind#DIMENSION} in small letters, else empty
 * @param text the value as written
 */
public record CssValue(Kind kind, double number, String unit, String text) {
    /** The sorts of values. */
    public enum Kind {
        /** {@code 0.5} */
        NUMBER,
        /** {@code 50%} */
        PERCENTAGE,
        /** {@code 90deg} */
        DIMENSION,
        /** {@code none} */
        WORD,
        /** {@code /} */
        SLASH
    }

    /** Whether it is of this kind. */
    public boolean is(Kind wanted) {
        return kind == wanted;
    }

    /** Whether it is this word, in letters of any size. */
    public boolean isWord(String word) {
        return kind == Kind.WORD && AsciiCase.lower(text).equals(word);
    }

    /** The value as written, for messages. */
    public String quoted() {
        return Quoted.of(text);
    }
}
