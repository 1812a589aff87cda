package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The rule of WCAG 2.0: max(0, (R - G - B) * 320) changes by more than 20, a sixteenth of full, to or from red. */
class OlderRedSwingsTest {
    private static final int SIXTEENTH = CodeLight.ONE / 16;
    private static final int FULL = CodeLight.ONE;

    private final OlderRedSwings swings = new OlderRedSwings(2);

    /** Just 20 is not more than 20. */
    @Test
    void aSixteenthIsNotYetAChange() {
        assertThat(swings.step(0, 0, 0, false)).isFalse();
        assertThat(swings.step(0, 0, SIXTEENTH, true)).isFalse();
        assertThat(swings.step(0, 0, SIXTEENTH + 1, true)).isTrue();
        assertThat(swings.step(0, 0, 1, true)).isFalse();
        assertThat(swings.step(0, 0, 0, true)).isTrue();
    }

    /** By hand from the decoding of IEC 61966-2-1: of 70,0,0 it is 19.5987, of 71,0,0 20.1632. */
    @Test
    void codeSeventyOneIsTheFirstThatCounts() {
        assertThat(flash(70)).isZero();
        assertThat(flash(71)).isEqualTo(2);
    }

    private static int flash(int code) {
        OlderRedSwings fresh = new OlderRedSwings(1);
        int value = CodeLight.redExcess(CodeLight.of(new byte[] {(byte) code, 0, 0}, 0));
        assertThat(value * 320.0 / FULL).isBetween(19.5986, 20.1633);
        int found = 0;
        for (int i = 0; i < 3; i++) {
            found += fresh.step(0, 0, i == 1 ? value : 0, i == 1) ? 1 : 0;
        }
        return found;
    }

    /** Cyan and blue have R - G - B below 0, which is no less than black has. */
    @Test
    void whatHasLittleRedIsZero() {
        swings.step(0, 0, -FULL, false);
        assertThat(swings.step(0, 0, SIXTEENTH, true)).isFalse();
        assertThat(swings.step(0, 0, SIXTEENTH + 1, true)).isTrue();
    }

    /** Two oranges that are not saturated: neither end is red, however far they are apart. */
    @Test
    void oneEndIsASaturatedRed() {
        swings.step(0, 0, 0, false);
        assertThat(swings.step(0, 0, FULL / 2, false)).isFalse();
        assertThat(swings.step(0, 0, 0, false)).isFalse();
        assertThat(swings.step(0, 0, FULL / 2, true)).isTrue();
        assertThat(swings.step(0, 0, 0, false)).as("from red").isTrue();
    }

    /** From a dark red up to a bright orange that is not saturated. */
    @Test
    void theLowerEndMayBeTheRedOne() {
        swings.step(0, 0, SIXTEENTH / 2, true);
        assertThat(swings.step(0, 0, FULL / 2, false)).isTrue();
    }

    /** Half a sixteenth a frame: the third step is more than one from the valley, and no later one counts again. */
    @Test
    void aFadeIsOneChange() {
        int found = 0;
        for (int step = 0; step <= 20; step++) {
            boolean changed = swings.step(0, 0, step * SIXTEENTH / 2, step > 0);
            assertThat(changed).isEqualTo(step == 3);
            found += changed ? 1 : 0;
        }
        for (int step = 20; step >= 0; step--) {
            found += swings.step(0, 0, step * SIXTEENTH / 2, step > 0) ? 1 : 0;
        }
        assertThat(found).isEqualTo(2);
    }

    /** What falls back by less than a sixteenth and rises on is one rise. */
    @Test
    void smallDipsAreNoChanges() {
        swings.step(0, 0, 0, false);
        assertThat(swings.step(0, 0, 4 * SIXTEENTH, true)).isTrue();
        assertThat(swings.step(0, 0, 3 * SIXTEENTH, true)).isFalse();
        assertThat(swings.step(0, 0, 8 * SIXTEENTH, true)).isFalse();
        assertThat(swings.step(0, 0, 6 * SIXTEENTH, true)).as("from the peak").isTrue();
    }

    @Test
    void signalsDoNotMix() {
        swings.step(0, 0, 0, false);
        swings.step(1, 0, FULL, true);
        assertThat(swings.step(0, 0, 0, false)).isFalse();
        assertThat(swings.step(1, 0, FULL, true)).isFalse();
        assertThat(swings.step(1, 0, 0, false)).isTrue();
    }
}
