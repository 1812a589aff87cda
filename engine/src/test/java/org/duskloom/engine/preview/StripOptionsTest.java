package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripOptionsTest {
    @ParameterizedTest
    @CsvSource({"0, 64, 1", "-1, 64, 1", "1, 63, 1", "1, 64, 0", "1, 64, 101", "1, -2147483648, 1"})
    void refusesWhatIsOutOfRange(int columns, int width, int pixel) {
        assertThatThrownBy(() -> options(columns, width, pixel))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("columns from 1, panels from 64 dots, pixels of 1 to 100");
    }

    @Test
    void takesTheLeastAndTheMost() {
        assertThat(options(1, 64, 1).pixelSize()).hasValue(1);
        assertThat(options(Integer.MAX_VALUE, Integer.MAX_VALUE, 100).columns()).hasValue(Integer.MAX_VALUE);
    }

    /** What was asked for is not overruled by what is worked out. */
    @Test
    void aGivenWidthStays() {
        StripOptions given = options(2, 200, 8);
        assertThat(given.withPanelWidth(900)).isEqualTo(given);
        StripOptions open = new StripOptions(OptionalInt.of(2), OptionalInt.empty(), OptionalInt.of(8), true);
        assertThat(open.withPanelWidth(900))
                .isEqualTo(new StripOptions(OptionalInt.of(2), OptionalInt.of(900), OptionalInt.of(8), true));
    }

    private static StripOptions options(int columns, int width, int pixel) {
        return new StripOptions(OptionalInt.of(columns), OptionalInt.of(width), OptionalInt.of(pixel), false);
    }
}
