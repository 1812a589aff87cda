package org.duskloom.engine.css;

/** CSS compares names "ASCII case-insensitively": only A to Z have small letters (W3C Infra, "ASCII lowercase"). */
public final class AsciiCase {
    private AsciiCase() {}

    /** The text with A to Z in small letters and everything else as it was. */
    public static String lower(String text) {
        StringBuilder lower = new StringBuilder(text);
        for (int i = 0; i < lower.length(); i++) {
            char letter = lower.charAt(i);
            if (letter >= 'A' && letter <= 'Z') {
                lower.setCharAt(i, (char) (letter + ('a' - 'A')));
            }
        }
        return lower.toString();
    }
}
