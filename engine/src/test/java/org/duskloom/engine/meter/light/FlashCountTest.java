package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Technique G19 of WCAG 2.2: no more than three flashes, six opposing changes, in any second. */
class FlashCountTest {
    /** Light that flashes five times a second has ten changes: slowed by 10/6 it has three flashes. */
    @ParameterizedTest
    @CsvSource({"0, true, 0", "5, true, 0.8333333333", "6, true, 1", "7, false, 1.1666666667", "10, false, 1.6666666667"
    })
    void sixChangesAreAllowedAndSevenAreNot(int most, boolean passes, double slowBy) {
        FlashCount count = new FlashCount(
                FlashRule.GENERAL,
                most,
                new FlashPlace(OptionalInt.empty(), OptionalInt.empty()),
                0,
                false,
                most,
                0,
                0);
        assertThat(count.passesEverywhere()).isEqualTo(passes);
        assertThat(count.slowBy()).isCloseTo(slowBy, within(1e-9));
    }

    @Test
    void pixelsThatAreNeverLitAreCountedOverAllProps() {
        PropUse fence = new PropUse("fence", 9, 0, 0.5, new int[] {1, 4, 8}, new float[0]);
        PropUse pond = new PropUse("pond", 2, 1, 0, new int[] {0, 1}, new float[0]);
        PropUse gate = new PropUse("gate", 2, 0, 1, new int[0], new float[0]);
        assertThat(new UseFigures(List.of(fence, pond, gate), List.of()).neverLitCount())
                .isEqualTo(5);
        assertThat(new UseFigures(List.of(), List.of()).neverLitCount()).isZero();
    }
}
