package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Verdicts: six changes within a second pass, seven do so by a small area alone (WCAG 2.2, technique G19 and
 * 2.3.1).
 */
class FlashFiguresTest {
    private static final FlashPlace WHOLE = new FlashPlace(OptionalInt.empty(), OptionalInt.empty());

    @ParameterizedTest
    @CsvSource({
        "6, 6, 0, 0, 0, true",
        "7, 0, 0, 0, 0, false",
        "0, 7, 0, 0, 0, false",
        "7, 7, 10, 1, 1, true",
        "7, 7, 10, 1.01, 1, false",
        "7, 7, 10, 0.5, 1.01, false",
        "6, 6, 10, 9, 9, true"
    })
    void passesByCountOrByArea(int light, int red, double metres, double lightShare, double redShare, boolean passes) {
        FlashFigures figures = new FlashFigures(
                metres > 0 ? OptionalDouble.of(metres) : OptionalDouble.empty(),
                count(FlashRule.GENERAL, light, 1, lightShare),
                count(FlashRule.RED, red, 1, redShare),
                List.of());
        assertThat(figures.passes()).isEqualTo(passes);
    }

    /**
     * What does not pass is told before what does, however often that changes; else the one with more, light
     * first.
     */
    @ParameterizedTest
    @CsvSource({
        "9, 8, 0.5, 2, RED",
        "8, 9, 2, 0.5, GENERAL",
        "8, 9, 2, 2, RED",
        "9, 8, 2, 2, GENERAL",
        "5, 5, 0, 0, GENERAL",
        "4, 5, 0, 0, RED"
    })
    void tellsTheWorstFirst(int light, int red, double lightShare, double redShare, FlashRule worst) {
        FlashFigures figures = new FlashFigures(
                OptionalDouble.of(10),
                count(FlashRule.GENERAL, light, 1, lightShare),
                count(FlashRule.RED, red, 1, redShare),
                List.of());
        assertThat(figures.worst().rule()).isEqualTo(worst);
    }

    @Test
    void tellsOfAPropByTheWorseRule() {
        FlashFigures.PropFlashes rose =
                new FlashFigures.PropFlashes("rose", count(FlashRule.GENERAL, 7, 3, 0), count(FlashRule.RED, 9, 12, 0));
        FlashFigures.PropFlashes fern =
                new FlashFigures.PropFlashes("fern", count(FlashRule.GENERAL, 6, 0, 0), count(FlashRule.RED, 0, 0, 0));
        assertThat(rose.pixelsOver()).isEqualTo(12);
        assertThat(rose.passesEverywhere()).isFalse();
        assertThat(fern.passesEverywhere()).isTrue();
    }

    /** Twelve changes at twice the time are six. */
    @Test
    void saysByHowMuchToSlowDown() {
        assertThat(count(FlashRule.GENERAL, 12, 1, 0).slowBy()).isEqualTo(2);
        assertThat(count(FlashRule.GENERAL, 7, 1, 0).slowBy()).isEqualTo(7 / 6.0);
    }

    private static FlashCount count(FlashRule rule, int most, int pixelsOver, double fieldShare) {
        return new FlashCount(rule, most, WHOLE, 0, false, most, pixelsOver, fieldShare);
    }
}
