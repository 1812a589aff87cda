package org.duskloom.engine.document;

/**
 * How a CSV file is written: with commas, as RFC 4180 has it, or as spreadsheets of many countries write and open it,
 * with semicolons between cells and a comma in numbers.
 */
public enum CsvStyle {
    /** Commas between cells, dots in numbers. */
    COMMAS(',', '.', "comma", ""),
    /**
     * Semicolons between cells, commas in numbers. What is written begins with U+FEFF, as spreadsheets take a file
     * without it for one of their own country's encoding.
     */
    SEMICOLONS(';', ',', "semicolon", CsvStyle.BYTE_ORDER_MARK);

    static final String BYTE_ORDER_MARK = "\uFEFF";

    private final char separator;
    private final char decimalSign;
    private final String separatorWord;
    private final String start;

    CsvStyle(char separator, char decimalSign, String separatorWord, String start) {
        this.separator = separator;
        this.decimalSign = decimalSign;
        this.separatorWord = separatorWord;
        this.start = start;
    }

    /** The style that a header leaves no doubt about: semicolons, and no comma; else commas. */
    static CsvStyle ofHeader(String line) {
        return line.indexOf(';') >= 0 && line.indexOf(',') < 0 ? SEMICOLONS : COMMAS;
    }

    /** What a file begins with, before all else. */
    public String start() {
        return start;
    }

    /** What stands between two cells. */
    public char separator() {
        return separator;
    }

    char decimalSign() {
        return decimalSign;
    }

    /** What a person calls the separator. */
    String separatorWord() {
        return separatorWord;
    }

    CsvStyle other() {
        return this == COMMAS ? SEMICOLONS : COMMAS;
    }

    /** What to say where cells are parted by the separator of the other style. */
    String otherSeparator() {
        return "the separator is a " + separatorWord + ", not a " + other().separatorWord
                + (this == COMMAS ? "; where rows have semicolons, the header has them too" : "");
    }

    /** Names of columns, none of which needs quotes, with what stands between cells; they are given with commas. */
    public String header(String columns) {
        return columns.replace(',', separator);
    }

    /** A number as it stands in a cell; one with a dot is given. */
    public String number(String decimal) {
        return decimal.replace('.', decimalSign);
    }

    /**
     * A text as it stands in a cell: in quotes where it holds the separator, a quote or a line end, begins with the
     * sign of a comment, or has blanks round it, which would be dropped.
     */
    public String cell(String text) {
        return isPlain(text) ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    private boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == separator || c == '"' || c == '\n' || c == '\r') {
                return false;
            }
        }
        return text.isEmpty()
                || text.charAt(0) != '#' && !isBlank(text.charAt(0)) && !isBlank(text.charAt(text.length() - 1));
    }

    /** Both to the parser, which drops what is not above a space, and to rows without quotes. */
    private static boolean isBlank(char c) {
        return c <= ' ' || Character.isWhitespace(c);
    }
}
