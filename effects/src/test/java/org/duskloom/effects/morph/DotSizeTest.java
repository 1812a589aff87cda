package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.duskloom.effects.Look;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DotSizeTest {
    /** Size 2 and a bulge of 3, 0 or 1: at 1/4 of the way 4p(1 - p) is 3/4, half way 1. */
    @ParameterizedTest
    @CsvSource({
        "3, 0,1, 6",
        "3, 0,0.25, 5",
        "3, 0.75,1, 5",
        "3, 0.25,0.25, 5",
        "3, 0.4,0.6, 6",
        "3, 0,0, 2",
        "0, 0,1, 2",
        "0, 0.25,0.5, 0.5",
        "0, 0.25,0.75, 0.5",
        "1, 0,1, 2",
        "1, 0.5,0.5, 2"
    })
    void isAtMostWhatItReachesOnTheWay(double bulge, double from, double to, double most) {
        DotSize size = size(NumberTrack.constant(2), NumberTrack.constant(bulge));
        assertThat(size.mostSpacings(from, to)).isCloseTo(most, within(1e-12));
    }

    /** Numbers that move: at no time more than at their greatest keys. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.9})
    void isNeverMoreWhileItMoves(double from) {
        DotSize size = size(moving(1, 3), moving(4, 0.5));
        double to = from + 0.1;
        for (double second = 0; second <= 3; second += 0.125) {
            for (double progress = from; progress <= to; progress += 0.01) {
                assertThat(size.spacings(new CueTime().set(second, 3), progress))
                        .isLessThanOrEqualTo(size.mostSpacings(from, to));
            }
        }
    }

    private static NumberTrack moving(double from, double to) {
        return NumberTrack.keyed(List.of(new NumberKey(0, from, Look.linear()), new NumberKey(3, to, Look.linear())));
    }

    private static DotSize size(NumberTrack size, NumberTrack bulge) {
        return DotSize.of(Settings.of(Map.of(DotSize.SIZE, size, DotSize.BULGE, bulge)));
    }
}
