package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where cells stand in CSV text: RFC 4180, with blanks round cells and lines of comments. */
class CsvScanTest {
    private static CsvScan scan(String text) {
        return new CsvScan(text, CsvStyle.COMMAS);
    }

    /** Offsets counted by hand: a quote counts as the start of its cell, blanks do not. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            a,b,c           | 0 2 4
            ~ a , b,c~      | 1 5 7
            "a,b",c,d       | 0 6 8
            "a""b,",c,d     | 0 8 10
            ,,x             | 0 1 2
            """)
    void findsCells(String record, String starts) {
        String found = "";
        for (int column = 0; column < 3; column++) {
            found += scan(record).cellStart(0, column) + " ";
        }
        assertThat(found.strip()).isEqualTo(starts);
    }

    /** A cell that is missing begins where its record ends. */
    @Test
    void aMissingCellIsAtTheEndOfItsRow() {
        assertThat(scan("a,b\nc").cellStart(0, 5)).isEqualTo(3);
        assertThat(scan("a").cellStart(0, 1)).isEqualTo(1);
    }

    /** RFC 4180, section 2, number 6: line breaks within quotes are part of the cell. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            ~a,b%c~       | 4
            ~a,b^c~       | 4
            ~a,b^%c~      | 5
            ~a,"x%y"%c~   | 8
            ~a,"x^%y"^%c~ | 10
            ~"%",b%c~     | 6
            ~a,b~         | 3
            ~a,"b~        | 4
            """)
    void findsTheNextRecord(String text, int start) {
        assertThat(scan(text.replace('%', '\n').replace('^', '\r')).nextRecord(0))
                .isEqualTo(start);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            ~%%# note%a,b~ | 9
            ~a,b~          | 0
            ~#%#%~         | 4
            ~# a "%x~      | 6
            """)
    void passesOverCommentsAndEmptyLines(String text, int start) {
        assertThat(scan(text.replace("%", "\n")).skipIdleLines(0)).isEqualTo(start);
    }

    /** Semicolons separate where the decimal sign is a comma. */
    @Test
    void takesTheSeparatorOfTheStyle() {
        CsvStyle semicolons = Arrays.stream(CsvStyle.values())
                .filter(style -> style.separator() == ';')
                .findFirst()
                .orElseThrow();
        assertThat(new CsvScan("1,5;2,5;x", semicolons).cellStart(0, 2)).isEqualTo(8);
    }

    private static List<String> header(String text) {
        Problems problems = new Problems();
        Optional<CsvTable> table = CsvReader.read(Inputs.source("map.csv", text), problems);
        assertThat(table.isEmpty()).isEqualTo(problems.hasErrors());
        return Inputs.shown(problems);
    }

    /** What spreadsheets of some countries write when they are asked for CSV. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            prop\tpixel\tx ~ separated by tabs
            prop|pixel|x   ~ separated by vertical bars
            prop,pixel;x   ~ has commas and semicolons
            prop,x,Prop    ~ the column "Prop" stands twice in the header
            """)
    void refusesHeadersOfAnotherForm(String header, String message) {
        assertThat(header(header + "\n1,2,3\n"))
                .anySatisfy(line -> assertThat(line).contains(message));
    }
}
