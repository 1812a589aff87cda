package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against {@link Double#parseDouble}, whose result is the nearest double by its specification. */
class CellNumberTest {
    private static void assertNearest(String text) {
        assertThat(CellNumber.parse(text, CsvStyle.COMMAS))
                .as(text)
                .isEqualTo(OptionalDouble.of(Double.parseDouble(text)));
        assertThat(CellNumber.parse(text.replace('.', ','), CsvStyle.SEMICOLONS))
                .as(text)
                .isEqualTo(OptionalDouble.of(Double.parseDouble(text)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "-0",
                "0.0",
                "-0.000",
                ".5",
                "5.",
                "-.5",
                "0.1",
                "0.3",
                "1.1",
                "123456789012345",
                "0.00000000000001",
                "999999999999999",
                "9999999999999999",
                "12345678901234567890",
                "0.000000000000000000001",
                "+3",
                "1e3",
                "1E-3",
                "-12.5e+2",
                "9007199254740993",
                "0000000000000000000001.5"
            })
    void isTheNearestDouble(String text) {
        assertNearest(text);
    }

    @Test
    void isTheNearestDoubleForManyNumbers() {
        Random random = new Random(14);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "-" : "");
            int digits = 1 + random.nextInt(18);
            int point = random.nextInt(digits + 1);
            for (int k = 0; k < digits; k++) {
                text.append(k == point ? "." : "").append((char) ('0' + random.nextInt(10)));
            }
            assertNearest(text.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-",
                ".",
                "-.",
                "1.2.3",
                "1-2",
                "--1",
                "1 2",
                "NaN",
                "Infinity",
                "0x1p3",
                "1f",
                "1d",
                "\u0661"
            })
    void isNoNumber(String text) {
        assertThat(CellNumber.parse(text, CsvStyle.COMMAS)).isEmpty();
    }
}
