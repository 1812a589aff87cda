package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates as spreadsheets show them: common practice, no source. */
class CellDateTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1. Feb",
                "01. Feb",
                "1.Feb",
                "1-Feb",
                "1 Feb 2026",
                "12. M\u00e4rz",
                "3-d\u00e9c.",
                "1-Feb-26",
                "Feb 26",
                "Feb. 2026",
                "2026-02-01",
                "2026-02-01 00:00:00",
                "2026-02-01T00:00",
                "01.02.2026",
                "1.2.26",
                "2/1/2026",
                "01.02.",
                "1. 2."
            })
    void isADate(String cell) {
        assertThat(CellDate.is(cell)).isTrue();
        assertThat(CellNumber.hint(cell, CsvStyle.COMMAS))
                .isEqualTo("this looks like a date that a spreadsheet made of a number: format the column as number or"
                        + " text, and type it again");
    }

    /** The short names of months of the Common Locale Data Repository (Unicode CLDR), which the JDK carries. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "fr", "es", "it", "nl", "pt", "da", "sv", "nb", "pl"})
    void knowsTheMonthsOfALanguage(String language) {
        for (Month month : Month.values()) {
            String name = month.getDisplayName(TextStyle.SHORT, Locale.forLanguageTag(language));
            assertThat(CellDate.is("5 " + name)).as("5 %s", name).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12",
                "12.5",
                "123.",
                "1.5",
                "12 mm",
                "12mm",
                "3 inch",
                "left",
                "Feb",
                "1.600.000",
                "1.600",
                "192.168.1.20",
                "1-2",
                "2026-02/01",
                "4 metres",
                "x 12",
                ""
            })
    void isNoDate(String cell) {
        assertThat(CellDate.is(cell)).isFalse();
    }
}
