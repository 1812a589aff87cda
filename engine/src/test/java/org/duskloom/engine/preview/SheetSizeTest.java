package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.duskloom.engine.file.OutputRefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hundred million dots of a picture and ten million of a panel, worked out by hand. */
class SheetSizeTest {
    @ParameterizedTest
    @CsvSource({"10000, 10000", "100000000, 1", "1, 100000000", "0, 5", "5, 0", "9223372036854775807, 0"})
    void makesWhatFits(long width, long height) {
        assertThatCode(() -> SheetSize.refuseTooLarge("a sheet", width, height, ""))
                .doesNotThrowAnyException();
    }

    /** The last two have products that a long does not hold: 2^64 is 0 there, and the other is below 0. */
    @ParameterizedTest
    @CsvSource({
        "10001, 10000",
        "10000, 10001",
        "100000001, 1",
        "1, 100000001",
        "4294967296, 4294967296",
        "9223372036854775807, 3"
    })
    void refusesOneDotMore(long width, long height) {
        assertThatThrownBy(() -> SheetSize.refuseTooLarge("a sheet", width, height, "take fewer"))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessage("a sheet would be " + width + " by " + height
                        + " dots, and at most 100 million are made; take fewer");
    }

    /** 3162 squared is 9,998,244, 3163 squared 10,004,569; 65,536 squared is 0 as an int. */
    @Test
    void panelsHaveABoundOfTheirOwn() {
        assertThatCode(() -> SheetSize.refuseLargePanel(3162, 3162)).doesNotThrowAnyException();
        assertThatCode(() -> SheetSize.refuseLargePanel(10_000_000, 1)).doesNotThrowAnyException();
        assertThatThrownBy(() -> SheetSize.refuseLargePanel(3163, 3163))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageStartingWith("a panel would be 3163 by 3163 dots, and at most 10 million are made");
        assertThatThrownBy(() -> SheetSize.refuseLargePanel(65_536, 65_536)).isInstanceOf(OutputRefusedException.class);
    }
}
