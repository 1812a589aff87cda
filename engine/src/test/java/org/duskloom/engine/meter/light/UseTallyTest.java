package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** How much of a display is used, of two props of one pixel each; at 20 frames a second, worked out by hand. */
class UseTallyTest {
    private static final SignalLayout LAYOUT = SignalLayout.of(Flickers.props(1, 1));
    private static final byte[] DARK = new byte[6];

    /**
     * 480 frames are 240 stretches of two: bright in the first half, half as bright in every other frame after
     * it.
     */
    @Test
    void chartsTheMeanOfEachStretch() {
        UseTally tally = new UseTally(LAYOUT, 480, 20);
        for (int frame = 0; frame < 480; frame++) {
            tally.prop(0, frame < 240 ? 1 : frame % 2 * 0.5, frame >= 240 && frame % 2 == 0);
            tally.prop(1, 0, true);
            tally.endFrame(DARK, 0);
        }
        PropUse first = tally.figures(new boolean[] {true, false}).props().get(0);
        PropUse second = tally.figures(new boolean[] {true, false}).props().get(1);
        assertThat(first.columns()).hasSize(240);
        assertThat(first.columns()[119]).isEqualTo(1);
        assertThat(first.columns()[120]).isEqualTo(0.25f);
        assertThat(first.meanLight()).isCloseTo(0.625, within(1e-12));
        assertThat(first.darkShare()).isEqualTo(0.25);
        assertThat(first.neverLit()).isEmpty();
        assertThat(second.darkShare()).isEqualTo(1);
        assertThat(second.neverLit()).containsExactly(0);
    }

    /** Of twenty frames a second every fifth is looked at for colours: here those are blue, all others red. */
    @Test
    void looksAtColoursFourTimesASecond() {
        UseTally tally = new UseTally(LAYOUT, 40, 20);
        for (int frame = 0; frame < 40; frame++) {
            tally.endFrame(frame % 5 == 0 ? rgb(0, 0, 255) : rgb(255, 0, 0), 0);
        }
        assertThat(tally.figures(new boolean[2]).hues()).containsExactly(new UseFigures.HueShare(LightHue.BLUE, 1));
    }

    /** White is three colours at full, green one: of four shares of light it has three, and is told first. */
    @Test
    void sharesLightByColour() {
        UseTally tally = new UseTally(LAYOUT, 1, 20);
        tally.endFrame(new byte[] {9, 9, 9, 0, -1, 0, -1, -1, -1}, 3);
        assertThat(tally.figures(new boolean[2]).hues())
                .containsExactly(
                        new UseFigures.HueShare(LightHue.WHITE, 0.75), new UseFigures.HueShare(LightHue.GREEN, 0.25));
    }

    /** Nothing lit, nothing looked at: no colours and no division by nothing. */
    @Test
    void saysNothingOfDarkness() {
        UseTally tally = new UseTally(LAYOUT, 0, 20);
        assertThat(tally.figures(new boolean[2]).hues()).isEmpty();
        assertThat(tally.figures(new boolean[2]).props()).allMatch(prop -> prop.meanLight() == 0);
    }

    private static byte[] rgb(int r, int g, int b) {
        return new byte[] {(byte) r, (byte) g, (byte) b, (byte) r, (byte) g, (byte) b};
    }
}
