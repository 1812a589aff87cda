package org.duskloom.engine.document;

import java.util.OptionalDouble;

/**
 * Numbers as they are written in CSV cells: {@code 12}, {@code -0.5}, {@code 1e3}. The decimal sign is that of the
 * file, never that of the computer.
 */
final class CellNumber {
    private static final int LONGEST = 100;

    private CellNumber() {}

    /** The nearest double; empty if the text is no number. Too large a number gives an infinity. */
    static OptionalDouble parse(String text, CsvStyle style) {
        if (text.isEmpty() || text.length() > LONGEST) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if ("0123456789+-eE".indexOf(sign) < 0 && sign != style.decimalSign()) {
                return OptionalDouble.empty();
            }
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text.replace(style.decimalSign(), '.')));
        } catch (NumberFormatException notANumber) {
            return OptionalDouble.empty();
        }
    }

    static String hint(String text, CsvStyle style) {
        if (text.isEmpty()) {
            return "the cell is empty; a number is needed";
        }
        String example = "a number is needed, such as 12 or -0" + style.decimalSign() + "5";
        if (text.length() > LONGEST) {
            return example;
        }
        if (style == CsvStyle.SEMICOLONS && text.matches("[-+]?[0-9]*\\.[0-9]+")) {
            return "the decimal sign of a file with semicolons is a comma: " + text.replace('.', ',');
        }
        if (style == CsvStyle.COMMAS && text.matches("[-+]?[0-9]+,[0-9]+")) {
            return "the decimal sign is a dot: " + text.replace(',', '.');
        }
        if (text.matches("[-+]?[0-9]{1,3}(\\.[0-9]{3})+(,[0-9]+)?|[-+]?[0-9]{1,3}(,[0-9]{3})+(\\.[0-9]+)?")) {
            return "write the number without signs between its thousands";
        }
        if (text.startsWith("\u2212") || text.startsWith("\u2013")) {
            return "the minus sign is the plain hyphen: -";
        }
        if (text.matches("[-+]?[0-9.,]+\\s*\\p{L}+")) {
            return "write the number without its unit";
        }
        return text.matches("[-+]?[0-9]+([ '\u00a0\u202f_][0-9]+)+") ? "write the number without gaps" : example;
    }
}
