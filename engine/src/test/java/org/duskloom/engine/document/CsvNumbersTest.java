package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvNumbersTest {
    private final Problems problems = new Problems();

    private <T> T cell(String written, Function<CsvRow, T> read) {
        CsvTable table = CsvReader.read(Inputs.source("map.csv", "prop,x\na," + written + "\n"), problems)
                .orElseThrow();
        Object[] found = new Object[1];
        table.forEachRow(row -> found[0] = read.apply(row));
        @SuppressWarnings("unchecked")
        T value = (T) found[0];
        return value;
    }

    @ParameterizedTest
    @CsvSource({"12, 12", "-0.5, -0.5", "+3, 3", ".5, 0.5", "5., 5", "1e3, 1000", "1E-3, 0.001", "\"7\", 7", "007, 7"})
    void readsNumbers(String written, double value) {
        OptionalDouble read = cell(written, row -> row.number(1, -1e9, 1e9));
        assertThat(read).hasValue(value);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            "1,5"    ~ "x" is "1,5"       ~ the decimal sign is a dot: 1.5
            "1,600"  ~ "x" is "1,600"     ~ write 1600 if its comma parts the thousands, 1.6 if it is the decimal sign, which in this file is a dot
            "0,600"  ~ "x" is "0,600"     ~ the decimal sign is a dot: 0.600
            1. Feb   ~ "x" is "1. Feb"    ~ this looks like a date that a spreadsheet made of a number
            2026-02-01 ~ "x" is "2026-02-01" ~ this looks like a date
            −5       ~ "x" is "−5"        ~ the minus sign is the plain hyphen: -
            "1,234,567.5" ~ "x" is "1,234,567.5" ~ write the number without signs between its thousands
            12mm     ~ "x" is "12mm"      ~ write the number without its unit
            0.5″     ~ "x" is "0.5″"      ~ write the number without its unit
            90°      ~ "x" is "90°"       ~ write the number without its unit
            20%      ~ "x" is "20%"       ~ write the number without a sign for per cent
            20.5 %   ~ "x" is "20.5 %"    ~ write the number without a sign for per cent
            (200.0)  ~ "x" is "(200.0)"   ~ write one number, without brackets; one that is below 0 has a - before it
            "(200,0)" ~ "x" is "(200,0)"  ~ write one number, without brackets; one that is below 0 has a - before it
            [5]      ~ "x" is "[5]"       ~ write one number, without brackets
            1 000    ~ "x" is "1 000"     ~ write the number without gaps
            1'000.5  ~ "x" is "1'000.5"   ~ write the number without gaps
            12. 5.   ~ "x" is "12. 5."    ~ this looks like a date that a spreadsheet made of a number
            0;5      ~ "x" is "0;5"       ~ the separator is a comma, not a semicolon; where rows have semicolons, the header has them too
            NaN      ~ "x" is "NaN"       ~ a number is needed
            Infinity ~ "x" is "Infinity"  ~ a number is needed
            0x10     ~ "x" is "0x10"      ~ a number is needed
            1d       ~ "x" is "1d"        ~ write the number without its unit
            left     ~ "x" is "left"      ~ a number is needed, such as 12 or -0.5
            --1      ~ "x" is "--1"       ~ a number is needed
            ٣        ~ "x" is "٣"         ~ a number is needed
            ``       ~ "x" is ""          ~ the cell is empty
            1e400    ~ "x" is "1e400"     ~ allowed: a number from -1000000000 to 1000000000
            1e30     ~ "x" is "1e30"      ~ allowed: a number from -1000000000 to 1000000000
            """)
    void teachesNumbers(String written, String message, String hint) {
        OptionalDouble read = cell(written, row -> row.number(1, -1e9, 1e9));
        assertThat(read).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:2:3: error: " + message + "; " + hint);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            1.5       ~ the decimal sign of a file with semicolons is a comma: 1,5
            1.600     ~ write 1600 if its dot parts the thousands, 1,6 if it is the decimal sign, which in this file is a comma
            -12.000   ~ write -12000 if its dot parts the thousands, -12 if it is the decimal sign, which in this file is a comma
            1.234,5   ~ write the number without signs between its thousands
            1.234.567 ~ write the number without signs between its thousands
            12,5mm    ~ write the number without its unit
            (200,0)   ~ write one number, without brackets; one that is below 0 has a - before it
            20 %      ~ write the number without a sign for per cent
            1 000,5   ~ write the number without gaps
            -1’234’567,25 ~ write the number without gaps
            #WERT!    ~ a spreadsheet writes this where a formula has failed; mend it there, and save again
            #DIV/0!   ~ a spreadsheet writes this where a formula has failed; mend it there, and save again
            #NAME?    ~ a spreadsheet writes this where a formula has failed; mend it there, and save again
            #NV       ~ a spreadsheet writes this where a formula has failed; mend it there, and save again
            # left    ~ a number is needed, such as 12 or -0,5
            1,2,3     ~ a number is needed, such as 12 or -0,5
            left      ~ a number is needed, such as 12 or -0,5
            """)
    void teachesNumbersBetweenSemicolons(String written, String hint) {
        CsvTable table = CsvReader.read(Inputs.source("map.csv", "prop;x\na;" + written + "\n"), problems)
                .orElseThrow();
        table.forEachRow(row -> assertThat(row.number(1, -1e9, 1e9)).isEmpty());
        assertThat(Inputs.shown(problems)).containsExactly("map.csv:2:3: error: \"x\" is \"" + written + "\"; " + hint);
    }

    /** A cell may hold anything, of any length. */
    @Test
    void teachesThoughTheCellIsLong() {
        cell("1" + " 1".repeat(50_000), row -> row.number(1, 0, 1));
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .endsWith("; a number is needed, such as 12 or -0.5");
    }

    @Test
    void shortensALongCell() {
        cell("9".repeat(500), row -> row.number(1, 0, 1));
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("9".repeat(60) + "…")
                .hasSizeLessThan(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "1.0", "1e0", "+1"})
    void readsWholeNumbers(String written) {
        OptionalLong read = cell(written, row -> row.whole(1, 1, 1));
        assertThat(read).hasValue(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "1.5", "11", "-1"})
    void teachesWholeNumbers(String written) {
        OptionalLong read = cell(written, row -> row.whole(1, 1, 10));
        assertThat(read).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "map.csv:2:3: error: \"x\" is \"" + written + "\"; allowed: a whole number from 1 to 10");
    }
}
