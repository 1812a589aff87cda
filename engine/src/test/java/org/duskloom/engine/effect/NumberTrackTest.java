package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberTrackTest {
    private static final NumberTrack TRACK = NumberTrack.keyed(List.of(
            new NumberKey(0.5, 0.2, Easing.LINEAR),
            new NumberKey(1.5, 1, Easing.EASE_IN_OUT),
            new NumberKey(3.5, 0.2, Easing.LINEAR)));

    /** Between the first keys 0.2 + 0.8 * ease-in-out(second - 0.5), from W3C CSS Easing Functions Level 1. */
    @ParameterizedTest
    @CsvSource({
        "-1, 0.2",
        "0, 0.2",
        "0.5, 0.2",
        "0.75, 0.3033296",
        "1, 0.6",
        "1.4, 0.9842224",
        "1.5, 1",
        "2, 0.8",
        "2.5, 0.6",
        "3.5, 0.2",
        "99, 0.2"
    })
    void movesFromKeyToKey(double second, double value) {
        assertThat(TRACK.at(second)).isEqualTo(value, within(1e-6));
        assertThat((float) TRACK.at(second, 7)).isEqualTo((float) TRACK.at(second));
    }

    @Test
    void jumpsWhereTwoKeysShareATime() {
        NumberTrack track = NumberTrack.keyed(List.of(
                new NumberKey(0, 1, Easing.LINEAR),
                new NumberKey(2, 3, Easing.LINEAR),
                new NumberKey(2, 10, Easing.LINEAR),
                new NumberKey(4, 12, Easing.LINEAR)));
        assertThat(track.at(Math.nextDown(2.0))).isEqualTo(3, within(1e-12));
        assertThat(track.at(2)).isEqualTo(10);
        assertThat(track.at(3)).isEqualTo(11);
    }

    @Test
    void knowsWhetherItMovesAndHowFar() {
        assertThat(NumberTrack.constant(3).isConstant()).isTrue();
        assertThat(NumberTrack.constant(3).at(1e9)).isEqualTo(3);
        assertThat(TRACK.isConstant()).isFalse();
        assertThat(NumberTrack.keyed(List.of(new NumberKey(0, 7, Easing.LINEAR), new NumberKey(1, 7, Easing.EASE)))
                        .isConstant())
                .isTrue();
        assertThat(TRACK.keyRange()).containsExactly(0.2, 1);
    }

    @Test
    void needsAKey() {
        List<NumberKey> none = List.of();
        assertThatThrownBy(() -> NumberTrack.keyed(none)).isInstanceOf(IllegalArgumentException.class);
    }
}
