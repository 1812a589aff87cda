package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NamesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "daisy-1",
                "Gänseblümchen",
                "left side",
                "7",
                "雛菊",
                "a@b",
                "a\u200db",
                "x.y",
                "\"q\"",
                "\ud83c\udf3c"
            })
    void allowsOrdinaryNames(String name) {
        assertThat(Names.fault(name)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
            ``,          is empty
            a/b,         holds /
            a*,          holds *
            ?,           holds ?
            a;b,         holds ;
            `a,b`,       `holds ,`
            a#1,         holds #
            @dusk,       begins with @
            ` a`,        has blanks round it
            `a `,        has blanks round it
            """)
    void refusesNamesThatMeanSomethingElse(String name, String fault) {
        assertThat(Names.fault(name).orElseThrow()).startsWith(fault);
    }

    /** Unicode Character Database: U+0000, U+0009, U+007F are Cc, U+200B and U+FEFF Cf, U+2028 Zl, U+00A0 Zs. */
    @ParameterizedTest
    @CsvSource({"0, U+0000", "9, U+0009", "7f, U+007F", "200b, U+200B", "feff, U+FEFF", "2028, U+2028", "d83c, U+D83C"})
    void refusesWhatNobodySees(String hex, String shown) {
        String name = "a" + Character.toString(Integer.parseInt(hex, 16)) + "b";
        assertThat(Names.fault(name)).contains("holds the invisible character " + shown);
    }

    @Test
    void refusesANoBreakSpaceAtTheEdge() {
        assertThat(Names.fault("a\u00a0")).contains("has blanks round it");
    }

    @Test
    void refusesNamesWithoutEnd() {
        assertThat(Names.fault("a".repeat(200))).isEmpty();
        assertThat(Names.fault("a".repeat(201))).contains("is longer than 200 characters");
    }
}
