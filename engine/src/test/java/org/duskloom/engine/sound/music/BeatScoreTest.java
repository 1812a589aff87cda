package org.duskloom.engine.sound.music;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The judge judged: values of mir_eval for true beats every half second from 0 to 30 s. */
class BeatScoreTest {
    private static final List<Double> TRUTH = every(0.5, 0);

    @Test
    void givesTheValuesOfTheReference() {
        assertThat(BeatScore.of(TRUTH, TRUTH)).isEqualTo(1);
        assertThat(BeatScore.of(every(0.5, 0.04), TRUTH)).isEqualTo(1);
        assertThat(BeatScore.of(every(0.5, 0.071), TRUTH)).isZero();
        assertThat(BeatScore.of(every(0.5, 0.25), TRUTH)).isZero();
        assertThat(BeatScore.of(every(0.25, 0), TRUTH)).isCloseTo(102 / 152.0, within(1e-12));
        assertThat(BeatScore.of(every(1, 0), TRUTH)).isCloseTo(52 / 77.0, within(1e-12));
        assertThat(BeatScore.of(every(1 / 3.0, 0), TRUTH)).isCloseTo(52 / 127.0, within(1e-12));
        assertThat(BeatScore.of(List.of(), TRUTH)).isZero();
    }

    @Test
    void oneBeatTooManyCostsALittle() {
        List<Double> more = new ArrayList<>(TRUTH);
        more.add(10.03);
        assertThat(BeatScore.of(more, TRUTH)).isCloseTo(102 / 103.0, within(1e-12));
    }

    private static List<Double> every(double step, double shift) {
        List<Double> beats = new ArrayList<>();
        for (int i = 0; i * step <= 30 + 1e-9; i++) {
            beats.add(i * step + shift);
        }
        return beats;
    }
}
