package org.duskloom.effects.kit.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LatticeSizeTest {
    private static final int LENGTH = 120;
    private static final int STEPS = 1200;
    private static final Reel REEL = Reel.of(new LightImage(LENGTH, 1, new float[LENGTH * 4]));

    /** What is no longer than a pixel, in no hurry for memory, is left as it is. */
    @ParameterizedTest
    @CsvSource({"1, 0", "0.2, 1", "1, 1"})
    void leavesSmallBoxesAlone(double box, double coarsest) {
        LatticeSize size = LatticeSize.of(REEL, box, 1, coarsest);
        assertThat(size.across()).isEqualTo(BoxFilter.Side.unchanged(LENGTH));
        assertThat(size.down()).isEqualTo(BoxFilter.Side.unchanged(1));
        assertThat(size.pixels()).isEqualTo(LENGTH);
    }

    /**
     * Three pixels to a box: 120 · 3/12 = 30 of 4 source pixels for a box of 12, filtered with sqrt(12² - 2·4²) = sqrt(112); 180 of
     * 2/3 for a box of 2, with sqrt(4 - 8/9) = sqrt(28/9).
     */
    @ParameterizedTest
    @CsvSource({"12, 0, 30, 112", "2, 0, 180, 3.1111111111111", "2, 1, 120, 2", "12, 10, 12, 100", "1, 4, 30, 16"})
    void hasThreePixelsToABox(double box, double coarsest, int count, double squaredFilter) {
        BoxFilter.Side across = LatticeSize.of(REEL, box, 1, coarsest).across();
        assertThat(across.count()).isEqualTo(count);
        assertThat(across.box()).isCloseTo(Math.sqrt(squaredFilter), within(1e-9));
    }

    @Test
    void hasAPixelAtLeast() {
        assertThat(LatticeSize.of(REEL, 1e6, 1e6, 0).pixels()).isEqualTo(1);
    }

    /**
     * One bright pixel, a box of length 1 with the variance 1/12, seen through a box of b, with b²/12: together (b² + 1)/12,
     * on the average of forty pixels, since one may lie well or badly between two samples. Where samples are about as far apart as
     * pixels, all lie alike, and some of that stays. Their light is neither lost nor made.
     */
    @ParameterizedTest
    @CsvSource({"2, 0.06", "3, 0.06", "5.5, 0.01", "12, 0.01", "24, 0.01"})
    void widensAPixelAsABoxDoes(double box, double share) {
        double sum = 0;
        double moment = 0;
        Patch patch = new Patch();
        patch.reset(0, STEPS);
        for (int bright = 40; bright < 80; bright++) {
            float[] light = new float[LENGTH * 4];
            light[4 * bright + 3] = 1;
            Lattice lattice = LatticeSize.of(REEL, box, 1, 0).lattice(new LightImage(LENGTH, 1, light), false);
            for (int i = 0; i < STEPS; i++) {
                patch.first[i] = (i + 0.5f) / STEPS;
                patch.second[i] = 0.5f;
            }
            lattice.paint(patch.first, patch.second, 0, STEPS, patch);
            for (int i = 0; i < STEPS; i++) {
                double away = (i + 0.5) * LENGTH / STEPS - bright - 0.5;
                sum += patch.alpha[i];
                moment += patch.alpha[i] * away * away;
            }
        }
        assertThat(moment / sum).isCloseTo((box * box + 1) / 12, within(share * box * box / 12));
        assertThat(sum * LENGTH / STEPS / 40).isCloseTo(1, within(0.001));
    }

    /** Two levels of 120 by 1, for boxes of 1 and of 2 pixels: 120 and, coarser than a pixel never, 180, of one picture. */
    @Test
    void countsThePixelsOfAllLevels() {
        LatticeStack.Key key = new LatticeStack.Key(1, 1, 2);
        assertThat(LatticeStack.pixels(key, REEL, 1)).isEqualTo(120 + 120);
        assertThat(LatticeStack.pixels(new LatticeStack.Key(12, 1, 1), REEL, 0)).isEqualTo(30);
    }
}
