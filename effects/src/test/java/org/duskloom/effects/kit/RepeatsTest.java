package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepeatsTest {
    private static final NumberSetting TIMES = NumberSetting.of("times", "", -10, 1000, 1, "how often");
    private static final float[] SHARES = {0, 0.125f, 0.375f, 0.5f, 0.875f};

    /** What is left of times · share without its whole part, in eighths; all of it exact in binary. */
    @ParameterizedTest
    @CsvSource({
        "1, 0, 1, 3, 4, 7",
        "2, 0, 2, 6, 0, 6",
        "3, 0, 3, 1, 4, 5",
        "0.5, 0, 0.5, 1.5, 2, 3.5",
        "0, 0, 0, 0, 0, 0",
        "-1, 0, 7, 5, 4, 1",
        "1000, 0, 0, 0, 0, 0",
        "999, 0, 7, 5, 4, 1"
    })
    void isWhatIsLeftOfAProduct(double times, float a, float b, float c, float d, float e) {
        assertThat(Repeats.rising(SharePlane.fixed(SHARES), constant(times)).fractions())
                .containsExactly(a / 8, b / 8, c / 8, d / 8, e / 8);
    }

    /** Falling is rising turned round: 1 - fraction, and 0 stays 0. */
    @Test
    void fallsWithTheShare() {
        assertThat(Repeats.falling(SharePlane.fixed(SHARES), constant(3)).fractions())
                .containsExactly(0, 0.625f, 0.875f, 0.5f, 0.375f);
    }

    /** Once over the way, the last pixel keeps just below the next period, also where it stands for many members. */
    @Test
    void doesNotBeginAnotherPeriodAtTheEnd() {
        float[] fractions = Repeats.rising(SharePlane.fixed(new float[] {0, SharePlane.LAST}), constant(1))
                .fractions();
        assertThat(fractions).containsExactly(0, SharePlane.LAST);
    }

    /** From once at 0 s to three times at 4 s: twice at 2 s, and going back it is once again. */
    @Test
    void followsTimesThatMove() {
        NumberTrack track =
                NumberTrack.keyed(List.of(new NumberKey(0, 1, Easing.LINEAR), new NumberKey(4, 3, Easing.LINEAR)));
        Repeats repeats = Repeats.rising(SharePlane.fixed(SHARES), dial(track));
        assertThat(repeats.isConstant()).isFalse();
        assertThat(repeats.fractions()).containsExactly(SHARES);
        repeats.begin(new CueTime().set(2, 100));
        assertThat(repeats.fractions()).containsExactly(0, 0.25f, 0.75f, 0, 0.75f);
        repeats.begin(new CueTime().set(0, 100));
        assertThat(repeats.fractions()).containsExactly(SHARES);
    }

    /** Shares that are second/8 for every pixel: at 3 s, twice 3/8. */
    @Test
    void followsSharesThatMove() {
        Repeats repeats = Repeats.rising(new RisingShares(), constant(2));
        assertThat(repeats.isConstant()).isFalse();
        repeats.begin(new CueTime().set(3, 100));
        assertThat(repeats.fractions()).containsExactly(0.75f, 0.75f);
        repeats.begin(new CueTime().set(6, 100));
        assertThat(repeats.fractions()).containsExactly(0.5f, 0.5f);
    }

    @Test
    void isConstantIfNothingMoves() {
        Repeats repeats = Repeats.rising(SharePlane.fixed(SHARES), constant(2));
        float[] before = repeats.fractions().clone();
        repeats.begin(new CueTime().set(77, 100));
        assertThat(repeats.isConstant()).isTrue();
        assertThat(repeats.fractions()).containsExactly(before);
    }

    @Test
    void canHaveNoPixels() {
        assertThat(Repeats.falling(SharePlane.fixed(new float[0]), constant(2)).fractions())
                .isEmpty();
    }

    private static Dial constant(double times) {
        return dial(NumberTrack.constant(times));
    }

    private static Dial dial(NumberTrack track) {
        return Dial.of(Settings.of(Map.of(TIMES, track)), TIMES);
    }

    private static final class RisingShares implements SharePlane {
        private final float[] shares = new float[2];

        @Override
        public boolean isConstant() {
            return false;
        }

        @Override
        public void begin(CueTime time) {
            shares[0] = (float) (time.seconds() / 8);
            shares[1] = (float) (time.seconds() / 8);
        }

        @Override
        public float[] shares() {
            return shares;
        }
    }
}
