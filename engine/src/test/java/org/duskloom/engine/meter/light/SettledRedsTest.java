package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.duskloom.engine.frame.FramePixels;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Behind the frame in which a rule of red is said to be settled it finds the same changes whatever the light was before
 * the first frame: by comparison with one that was something else.
 */
class SettledRedsTest {
    private static final int ROUNDS = 3000;
    private static final int FRAMES = 60;
    private static final SignalLayout LAYOUT = SignalLayout.of(FramePixels.unnamed(1));

    private final SplittableRandom random = new SplittableRandom(11);
    private int slope;

    @ParameterizedTest
    @ValueSource(ints = {RedSwings.BY_OLDER_RULE, RedSwings.BY_CHROMATICITY})
    void findTheSameAsAnyOther(int rule) {
        int compared = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int before = 1 + random.nextInt(30);
            byte[][] colors = new byte[before + FRAMES][];
            for (int i = 0; i < colors.length; i++) {
                colors[i] = i > 0 && random.nextInt(9) > 0 ? near(colors[i - 1]) : color();
            }
            Light fresh = new Light();
            Light other = new Light();
            for (int i = 0; i < colors.length; i++) {
                int found = other.show(colors[i]) & rule;
                if (i >= before) {
                    int alone = fresh.show(colors[i]) & rule;
                    boolean settled = i - before > fresh.reds.settledAt(rule, 0);
                    compared += settled ? alone : 0;
                    assertThat(settled && alone != found)
                            .as("round %d, frame %d", round, i - before)
                            .isFalse();
                }
            }
        }
        assertThat(compared).isGreaterThan(ROUNDS);
    }

    /** Reds, and what is a little too pale to be a saturated one. */
    private byte[] color() {
        int red = random.nextInt(256);
        int green = random.nextInt(2) == 0 ? 0 : random.nextInt(1 + red);
        return new byte[] {(byte) red, (byte) green, 0};
    }

    /** A little more or less green, for some frames the same way. */
    private byte[] near(byte[] color) {
        slope = random.nextInt(6) == 0 ? random.nextInt(81) - 40 : slope;
        int green = Math.max(0, Math.min(255, (color[1] & 0xFF) + slope));
        return new byte[] {color[0], (byte) green, 0};
    }

    /** A light of one pixel at 20 frames a second. */
    private static final class Light {
        private final PastColors past = new PastColors(LAYOUT, 20);
        private final RedSwings reds = new RedSwings(LAYOUT.signalCount(), past);
        private int place;

        int show(byte[] color) {
            past.keep(place, color, 0);
            return reds.step(0, place++, CodeLight.redExcess(CodeLight.of(color, 0)));
        }
    }
}
