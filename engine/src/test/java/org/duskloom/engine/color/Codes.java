package org.duskloom.engine.color;

import org.duskloom.engine.problem.TextFormatException;

/** Colours as the 8-bit codes that published tables list. */
final class Codes {
    private Codes() {}

    static String of(LinearColor color) {
        return SrgbEncoder.code(color.red()) + "," + SrgbEncoder.code(color.green()) + ","
                + SrgbEncoder.code(color.blue());
    }

    static LinearColor css(String text) {
        try {
            return CssColor.parse(text);
        } catch (TextFormatException refusal) {
            throw new AssertionError(refusal);
        }
    }
}
