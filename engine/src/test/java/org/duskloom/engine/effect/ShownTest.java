package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {
    @ParameterizedTest
    @CsvSource({"1.0, 1", "0.1, 0.1", "-2.50, -2.5", "1000000000, 1000000000"})
    void showsNumbersAsPeopleWriteThem(double value, String shown) {
        assertThat(Shown.number(value)).isEqualTo(shown);
    }

    @Test
    void showsTextsOnOneLine() {
        assertThat(Shown.text("a\nb")).isEqualTo("\"a\\u000ab\"");
    }

    @Test
    void showsTheFirstOfManyNames() {
        assertThat(Shown.names(List.of("a"))).isEqualTo("\"a\"");
        assertThat(Shown.names(List.of("a", "b", "c"))).isEqualTo("\"a\", \"b\", \"c\"");
        assertThat(Shown.names(List.of("a", "b", "c", "d", "e"))).isEqualTo("\"a\", \"b\", \"c\" and 2 more");
    }
}
