package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How much of a scene is seen, worked out on paper: it starts at 3 s of the show, that is at frame 120 of 40 a second.
 */
class PlannedShareTest {
    private static final FrameClock FROM_THREE_SECONDS = new FrameClock(FrameRate.of(40), ExactTime.ofSeconds(3));
    private static final NumberTrack HALF = NumberTrack.constant(0.5);
    private static final PlannedFade TWO_IN_FOUR_OUT = new PlannedFade(2, 4, Easing.LINEAR);

    /** Half of it is seen at most; it comes within two seconds and goes within the last four of its ten. */
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "120, 0",
        "140, 0.125",
        "160, 0.25",
        "200, 0.5",
        "300, 0.5",
        "360, 0.5",
        "400, 0.375",
        "440, 0.25",
        "520, 0"
    })
    void isOpacityTimesFade(long frame, double share) {
        assertThat(new PlannedShare(HALF, TWO_IN_FOUR_OUT, FROM_THREE_SECONDS, 10).at(frame))
                .isEqualTo(share, within(1e-12));
    }

    /** From 0.2 to 1 within four seconds, by the clock of the scene: before it begins it is what it will be then. */
    @ParameterizedTest
    @CsvSource({"0, 0.2", "80, 0.2", "120, 0.2", "160, 0.4", "200, 0.6", "240, 0.8", "280, 1", "400, 1"})
    void followsKeysFromTheStartOfTheScene(long frame, double share) {
        NumberTrack rising =
                NumberTrack.keyed(List.of(new NumberKey(0, 0.2, Easing.LINEAR), new NumberKey(4, 1, Easing.LINEAR)));
        assertThat(new PlannedShare(rising, PlannedFade.NONE, FROM_THREE_SECONDS, 10).at(frame))
                .isEqualTo(share, within(1e-12));
    }

    /**
     * An easing that falls short of its start and goes beyond its end: light is neither less than none nor more than
     * all.
     */
    @Test
    void staysBetweenNothingAndAll() throws Exception {
        Easing overshooting = Easing.parse("cubic-bezier(0.68, -0.55, 0.265, 1.55)");
        NumberTrack track =
                NumberTrack.keyed(List.of(new NumberKey(0, 0, Easing.LINEAR), new NumberKey(10, 1, overshooting)));
        PlannedShare share = new PlannedShare(track, PlannedFade.NONE, FROM_THREE_SECONDS, 10);
        assertThat(track.at(2)).isNegative();
        assertThat(share.at(120 + 2 * 40)).isZero();
        assertThat(track.at(8)).isGreaterThan(1);
        assertThat(share.at(120 + 8 * 40)).isEqualTo(1);
    }

    /** A half of a half is a quarter; the share of no scene takes nothing away. */
    @Test
    void multiplyInAGroup() {
        PlannedShare half = new PlannedShare(HALF, PlannedFade.NONE, FROM_THREE_SECONDS, 10);
        PlannedShare coming = new PlannedShare(HALF, TWO_IN_FOUR_OUT, FROM_THREE_SECONDS, 10);
        assertThat(new PlannedGroup(BlendMode.NORMAL, false, List.of()).opacityAt(160))
                .isEqualTo(1);
        PlannedGroup group = new PlannedGroup(BlendMode.SCREEN, true, List.of(half, coming));
        assertThat(group.opacityAt(120)).isZero();
        assertThat(group.opacityAt(160)).isEqualTo(0.125f);
        assertThat(group.opacityAt(200)).isEqualTo(0.25f);
        assertThat(group.blend()).isEqualTo(BlendMode.SCREEN);
        assertThat(group.mask()).isTrue();
    }
}
