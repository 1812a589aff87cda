package org.duskloom.engine.document;

import java.util.OptionalDouble;

/**
 * Numbers as they are written in CSV cells: {@code 12}, {@code -0.5}, {@code 1e3}. The decimal sign is that of the
 * file, never that of the computer.
 */
final class CellNumber {
    private static final int LONGEST = 100;

    /** All that {@link #plain} divides by. */
    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private CellNumber() {}

    /** The nearest double; empty if the text is no number. Too large a number gives an infinity. */
    static OptionalDouble parse(String text, CsvStyle style) {
        if (text.isEmpty() || text.length() > LONGEST) {
            return OptionalDouble.empty();
        }
        double plain = plain(text, style.decimalSign());
        return Double.isNaN(plain) ? parseAny(text, style) : OptionalDouble.of(plain);
    }

    /**
     * The number if it is written as nearly all are: digits with a decimal sign among them, in front a minus, 15 digits
     * or fewer. Those and the power of ten by which they are divided are doubles without rounding, so the quotient is
     * the nearest double (W. D. Clinger, "How to read floating point numbers accurately", 1990). NaN if it is not.
     */
    private static double plain(String text, char decimalSign) {
        int first = text.charAt(0) == '-' ? 1 : 0;
        int digits = 0;
        int places = -1;
        long number = 0;
        for (int i = first; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign >= '0' && sign <= '9') {
                number = number * 10 + (sign - '0');
                digits++;
                places += places < 0 ? 0 : 1;
            } else if (sign == decimalSign && places < 0) {
                places = 0;
            } else {
                return Double.NaN;
            }
            if (digits >= POWERS_OF_TEN.length) {
                return Double.NaN;
            }
        }
        if (digits == 0) {
            return Double.NaN;
        }
        double size = number / POWERS_OF_TEN[Math.max(0, places)];
        return first == 1 ? -size : size;
    }

    private static OptionalDouble parseAny(String text, CsvStyle style) {
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
        if (CellDate.is(text)) {
            return "this looks like a date that a spreadsheet made of a number: format the column as number or text, and"
                    + " type it again";
        }
        char other = style == CsvStyle.COMMAS ? ',' : '.';
        if (text.matches("[-+]?[1-9][0-9]{0,2}[" + other + "][0-9]{3}")) {
            return thousandsOrDecimals(text, other, style);
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
        String besides = besidesDigits(text);
        if (!besides.isEmpty()) {
            return besides;
        }
        if (style == CsvStyle.COMMAS && text.indexOf(';') >= 0) {
            return style.otherSeparator();
        }
        if (text.matches("#[\\p{L}0-9/]+[!?]?")) {
            return "a spreadsheet writes this where a formula has failed; mend it there, and save again";
        }
        return text.matches("[-+]?[0-9]+([ '\u2019\u00a0\u202f_][0-9]+)+([.,][0-9]+)?")
                ? "write the number without gaps"
                : example;
    }

    /** What to do about signs that are written with numbers and are no part of them; empty if there are none. */
    private static String besidesDigits(String text) {
        if (text.startsWith("\u2212") || text.startsWith("\u2013")) {
            return "the minus sign is the plain hyphen: -";
        }
        if (text.matches("[-+]?[0-9.,]+\\s*(\\p{L}+|[\u00b0'\"\u2032\u2033])")) {
            return "write the number without its unit";
        }
        if (text.matches("[-+]?[0-9.,]+[\\s\u00a0]*[%\u2030]")) {
            return "write the number without a sign for per cent";
        }
        if (text.matches("\\(.*\\)|\\[.*\\]")) {
            return "write one number, without brackets; one that is below 0 has a - before it";
        }
        return "";
    }

    /** Three digits behind a sign that is not the decimal sign of the file: a guess may be wrong by 1000. */
    private static String thousandsOrDecimals(String text, char sign, CsvStyle style) {
        String word = sign == ',' ? "comma" : "dot";
        String decimal = text.replaceFirst("[" + sign + "]?0*$", "").replace(sign, style.decimalSign());
        return "write " + text.replace(String.valueOf(sign), "") + " if its " + word + " parts the thousands, "
                + decimal + " if it is the decimal sign, which in this file is a " + (sign == ',' ? "dot" : "comma");
    }
}
