package org.duskloom.engine.document;

/**
 * How a CSV file is written: with commas, as RFC 4180 has it, or as spreadsheets of many countries write it, with
 * semicolons between cells and a comma in numbers.
 */
enum CsvStyle {
    /** Commas between cells, dots in numbers. */
    COMMAS(',', '.', "comma"),
    /** Semicolons between cells, commas in numbers. */
    SEMICOLONS(';', ',', "semicolon");

    private final char separator;
    private final char decimalSign;
    private final String separatorWord;

    CsvStyle(char separator, char decimalSign, String separatorWord) {
        this.separator = separator;
        this.decimalSign = decimalSign;
        this.separatorWord = separatorWord;
    }

    /** The style that a header leaves no doubt about: semicolons, and no comma; else commas. */
    static CsvStyle ofHeader(String line) {
        return line.indexOf(';') >= 0 && line.indexOf(',') < 0 ? SEMICOLONS : COMMAS;
    }

    char separator() {
        return separator;
    }

    char decimalSign() {
        return decimalSign;
    }

    /** What a person calls the separator. */
    String separatorWord() {
        return separatorWord;
    }
}
