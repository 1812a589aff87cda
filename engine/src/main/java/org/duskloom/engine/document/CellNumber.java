package org.duskloom.engine.document;

import java.util.OptionalDouble;

/** Numbers as they are written in CSV cells: {@code 12}, {@code -0.5}, {@code 1e3}; nothing that depends on a country. */
final class CellNumber {
    private static final int LONGEST = 100;

    private CellNumber() {}

    /** The nearest double; empty if the text is no number. Too large a number gives an infinity. */
    static OptionalDouble parse(String text) {
        if (text.isEmpty() || text.length() > LONGEST) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < text.length(); i++) {
            if ("0123456789+-.eE".indexOf(text.charAt(i)) < 0) {
                return OptionalDouble.empty();
            }
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException notANumber) {
            return OptionalDouble.empty();
        }
    }

    static String hint(String text) {
        if (text.isEmpty()) {
            return "the cell is empty; a number is needed";
        }
        if (text.matches("[-+]?[0-9]+,[0-9]+")) {
            return "the decimal sign is a dot: " + text.replace(',', '.');
        }
        if (text.startsWith("\u2212") || text.startsWith("\u2013")) {
            return "the minus sign is the plain hyphen: -";
        }
        if (text.matches("[-+]?[0-9.]+\\s*\\p{L}+")) {
            return "write the number without its unit";
        }
        return text.matches("[-+]?[0-9]+([ '\u00a0\u202f_][0-9]+)+")
                ? "write the number without gaps"
                : "a number is needed, such as 12 or -0.5";
    }
}
