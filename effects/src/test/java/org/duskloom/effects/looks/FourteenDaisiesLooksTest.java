package org.duskloom.effects.looks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.duskloom.effects.looks.FourteenDaisies.COLUMNS;
import static org.duskloom.effects.looks.FourteenDaisies.HEART;
import static org.duskloom.effects.looks.FourteenDaisies.PETALS;
import static org.duskloom.effects.looks.FourteenDaisies.PETAL_PIXELS;
import static org.duskloom.effects.looks.FourteenDaisies.PIXELS;
import static org.duskloom.effects.looks.FourteenDaisies.PROPS;
import static org.duskloom.effects.looks.FourteenDaisies.RIM;
import static org.duskloom.effects.looks.FourteenDaisies.TOP;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Looks that a builder wants on fourteen props with rings and loops, judged by the frames alone. */
class FourteenDaisiesLooksTest {
    @TempDir
    private Path folder;

    private FourteenDaisies under(String cue) throws IOException {
        return FourteenDaisies.under(cue, folder);
    }

    /** The head has just passed pixel k of n when k + 0.75 n-ths of a pass have gone by. */
    private static double headAt(int pixel, int pixels, double passSeconds) {
        return Math.round(100 * passSeconds * (pixel + 0.75) / pixels) / 100.0;
    }

    @Test
    void everyDaisyOpensFromItsHeart() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "spread": "each", "effect": "morph",
                 "with": {"from": "heart", "to": "petals", "size": 1, "every": "4s"}}""");
        for (int prop = 0; prop < PROPS; prop++) {
            daisies.at(0);
            assertThat(daisies.lit(prop, HEART, RIM)).isEqualTo(RIM - HEART);
            assertThat(daisies.lit(prop, PETALS, PIXELS)).isZero();
            daisies.at(3.99);
            assertThat(daisies.lit(prop, HEART, RIM)).isZero();
            assertThat(daisies.lit(prop, PETALS, PIXELS)).isEqualTo(PIXELS - PETALS);
        }
    }

    /** Whatever is lit is nearer to the middle of the group than whatever is not yet. */
    @Test
    void daisiesLightFromTheMiddleOutward() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "spread": "each", "stagger": {"by": "outward", "time": "6s"}, "effect": "wash"}""");
        int before = 0;
        for (double seconds = 0.05; seconds < 7; seconds += 0.1) {
            daisies.at(seconds);
            double farthestLit = 0;
            double nearestDark = Double.POSITIVE_INFINITY;
            int lit = 0;
            for (int prop = 0; prop < PROPS; prop++) {
                double distance = StrictMath.hypot(FourteenDaisies.x(prop, 0) - 3000, FourteenDaisies.y(prop, 0) - 500);
                if (daisies.light(prop, 0) > 0) {
                    lit++;
                    farthestLit = Math.max(farthestLit, distance);
                } else {
                    nearestDark = Math.min(nearestDark, distance);
                }
            }
            assertThat(farthestLit).isLessThan(nearestDark);
            assertThat(lit).isBetween(2, PROPS).isGreaterThanOrEqualTo(before);
            before = lit;
        }
        assertThat(before).isEqualTo(PROPS);
    }

    /** A ring of a third of the way: its light moves away from the middle of the group until it leaves it. */
    @Test
    void ripplesGrowOverTheWholeGroup() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "effect": "radiate", "with": {"width": 0.3, "every": "10s"}}""");
        double before = 0;
        for (double seconds = 0.5; seconds <= 6.5; seconds++) {
            daisies.at(seconds);
            double distance = 0;
            int lit = 0;
            for (int prop = 0; prop < PROPS; prop++) {
                for (int pixel = 0; pixel < PIXELS; pixel++) {
                    if (daisies.light(prop, pixel) > 0) {
                        distance += StrictMath.hypot(
                                FourteenDaisies.x(prop, pixel) - 3000, FourteenDaisies.y(prop, pixel) - 500);
                        lit++;
                    }
                }
            }
            assertThat(distance / lit).isGreaterThan(before);
            before = distance / lit;
        }
    }

    @Test
    void lightsLoopRoundEveryPetal() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisy-*/petals/*", "spread": "each", "effect": "chase", "with": {"tail": 0.4, "every": "1200ms"}}""");
        for (int head = 0; head < PETAL_PIXELS; head++) {
            daisies.at(headAt(head, PETAL_PIXELS, 1.2));
            for (int prop = 0; prop < PROPS; prop++) {
                assertThat(daisies.lit(prop, 0, PETALS)).isZero();
                for (int petal = PETALS; petal < PIXELS; petal += PETAL_PIXELS) {
                    assertThat(daisies.brightest(prop, petal, petal + PETAL_PIXELS))
                            .isEqualTo(petal + head);
                }
            }
        }
    }

    /**
     * One arm that is half a turn wide: the upper half, and a quarter of a turn counter-clockwise later the left one.
     */
    @Test
    void anArmTurnsOnEveryDaisy() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "spread": "each", "effect": "spin", "with": {"arms": 1, "width": 0.5, "every": "4s"}}""");
        assertHalf(daisies.at(0), pixel -> FourteenDaisies.ownY(pixel) > 0, pixel -> FourteenDaisies.ownY(pixel));
        assertHalf(daisies.at(1), pixel -> FourteenDaisies.ownX(pixel) < 0, pixel -> FourteenDaisies.ownX(pixel));
    }

    private static void assertHalf(FourteenDaisies daisies, IntPredicate lit, IntToDoubleFunction fromTheEdge) {
        for (int prop = 0; prop < PROPS; prop++) {
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                if (Math.abs(fromTheEdge.applyAsDouble(pixel)) > 1) {
                    assertThat(daisies.light(prop, pixel) > 0).isEqualTo(lit.test(pixel));
                }
            }
        }
    }

    /**
     * The daisies that stand in the pile are the first ones of the order; one light at a time is on its way to them.
     */
    @Test
    void daisiesGatherOneByOne() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "order": "members", "effect": "pile", "with": {"lights": 14, "hold": 0.1, "every": "10s"}}""");
        int standing = 0;
        Set<Integer> heights = new HashSet<>();
        for (double seconds = 0; seconds < 9.99; seconds += 0.02) {
            daisies.at(seconds);
            int height = 0;
            while (height < PROPS && daisies.color(height, 0) == 0xFFFFFF) {
                height++;
            }
            int first = height;
            while (first < PROPS && daisies.lit(first, 0, PIXELS) == 0) {
                first++;
            }
            // The light between two daisies shines on both, on each as a whole.
            for (int prop = first; prop < PROPS; prop++) {
                assertThat(daisies.lit(prop, 0, PIXELS)).isIn(0, prop < first + 2 ? PIXELS : 0);
            }
            // A light that has just come stands among the others already.
            assertThat(height).isBetween(standing, standing + 1);
            standing = height;
            heights.add(height);
        }
        assertThat(heights).hasSize(PROPS + 1);
    }

    @Test
    void twoColouredBandsCrossEachDaisy() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "spread": "each", "effect": "sweep",
                 "with": {"palette": "red", "width": 0.5, "toward": 90, "every": "4s"}},
                {"on": "daisies", "spread": "each", "effect": "sweep",
                 "with": {"palette": "blue", "width": 0.5, "toward": 90, "every": "4s", "phase": 0.5}}""");
        double reach = FourteenDaisies.reach(FourteenDaisies::ownY);
        // After 1 s of 4 the band that began in the lower half covers a quarter to three quarters of the height.
        daisies.at(1);
        for (int prop = 0; prop < PROPS; prop++) {
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                double share = 0.5 + FourteenDaisies.ownY(pixel) / reach / 2;
                if (Math.abs(share - 0.25) > 0.01 && Math.abs(share - 0.75) > 0.01) {
                    boolean red = share > 0.25 && share < 0.75;
                    assertThat(daisies.color(prop, pixel)).isEqualTo(red ? 0xFF0000 : 0x0000FF);
                }
            }
        }
    }

    @Test
    void windCrossesAllPetalsAsOneCanvas() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisy-*/petals", "effect": "sweep", "with": {"width": 0.5, "every": "10s"}}""");
        // The canvas reaches as far to the left of the first column as to the right of the last; the band covers its
        // left half.
        daisies.at(0);
        for (int prop = 0; prop < PROPS; prop++) {
            assertThat(daisies.lit(prop, 0, PETALS)).isZero();
            for (int pixel = PETALS; pixel < PIXELS; pixel++) {
                boolean left = FourteenDaisies.x(prop, pixel) < 3000;
                assertThat(daisies.light(prop, pixel) > 0).isEqualTo(left);
            }
        }
    }

    @Test
    void lightsRunThroughAllDaisiesAsOneLine() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "effect": "chase", "with": {"tail": 0.02, "every": "8540ms"}}""");
        for (int head : new int[] {20, PIXELS + 25, 5 * PIXELS + 40, 13 * PIXELS + 60}) {
            daisies.at(headAt(head, PROPS * PIXELS, 8.54));
            for (int prop = 0; prop < PROPS; prop++) {
                assertThat(daisies.brightest(prop, 0, PIXELS)).isEqualTo(prop == head / PIXELS ? head % PIXELS : -1);
            }
        }
    }

    @Test
    void aLightRunsRoundEveryDaisyByItself() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "spread": "each", "effect": "chase", "with": {"tail": 0.2, "every": "6100ms"}}""");
        for (int head : new int[] {0, 8, 9, 24, 25, 60}) {
            daisies.at(headAt(head, PIXELS, 6.1));
            for (int prop = 0; prop < PROPS; prop++) {
                assertThat(daisies.brightest(prop, 0, PIXELS)).isEqualTo(head);
            }
        }
    }

    /**
     * A drop crosses the whole height of the stage in 2 s, so what passes the upper row passes the lower, 1000 below,
     * later.
     */
    @Test
    void rainFallsOverTheWholeGroup() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "effect": "shower", "with": {"vary": 0, "tail": 0.1, "density": 1, "lanes": 10, "every": "2s"}}""");
        double height = 1000 + 2 * FourteenDaisies.reach(FourteenDaisies::ownY);
        double later = Math.round(100 * 2 * 1000 / height) / 100.0;
        long falling = 0;
        long rising = 0;
        for (int low = 0; low < COLUMNS; low++) {
            int high = low + COLUMNS;
            for (double seconds = 0; seconds < 8.5; seconds += 0.05) {
                int highNow = daisies.at(seconds).light(high, TOP);
                int lowNow = daisies.light(low, TOP);
                daisies.at(seconds + later);
                falling += (long) highNow * daisies.light(low, TOP);
                rising += (long) lowNow * daisies.light(high, TOP);
            }
        }
        assertThat(falling).isPositive().isGreaterThan(3 * rising);
    }

    /**
     * One swag over the whole width with a sag of a fifth of it, from the upper edge. A catenary of span 10 and sag 2
     * has a = 6.55862586753 (standard calculus; J. Bernoulli, Leibniz, Huygens 1691); here everything is a tenth of the
     * width times as large. The light is a fifth of half the width thick, half of that to either side.
     */
    @Test
    void swagsHangOverTheWholeGroup() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": "daisies", "effect": "festoon",
                 "with": {"sag": 0.2, "height": 1, "thickness": 0.2, "soft": 0}}""");
        daisies.at(0);
        double width = 6000 + 2 * FourteenDaisies.reach(FourteenDaisies::ownX);
        double top = 1000 + FourteenDaisies.reach(FourteenDaisies::ownY);
        double a = width / 10 * 6.55862586753;
        int lit = 0;
        for (int prop = 0; prop < PROPS; prop++) {
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                int at = pixel;
                int of = prop;
                double distance = IntStream.rangeClosed(0, 4000)
                        .mapToDouble(step -> width * (step / 4000.0 - 0.5))
                        .map(x -> StrictMath.hypot(
                                FourteenDaisies.x(of, at) - 3000 - x,
                                FourteenDaisies.y(of, at) - (top - width / 5 + a * StrictMath.cosh(x / a) - a)))
                        .min()
                        .orElseThrow();
                if (Math.abs(distance - width / 20) > 5) {
                    assertThat(daisies.light(prop, pixel) > 0)
                            .as("pixel %d of prop %d, %f from the swag", pixel, prop, distance)
                            .isEqualTo(distance < width / 20);
                    lit += distance < width / 20 ? 1 : 0;
                }
            }
        }
        assertThat(lit).isPositive();
    }

    @Test
    void pixelsTwinkleOnAllHeartsAndRims() throws IOException {
        FourteenDaisies daisies = under("""
                {"on": ["daisy-*/heart", "daisy-*/rim"], "effect": "twinkle",
                 "with": {"density": 0.5, "rise": 0, "fall": 0, "every": "1s"}}""");
        long lit = 0;
        Set<Long> patterns = new HashSet<>();
        daisies.at(5);
        for (int prop = 0; prop < PROPS; prop++) {
            long pattern = 0;
            for (int pixel = HEART; pixel < PETALS; pixel++) {
                pattern = pattern * 2 + (daisies.light(prop, pixel) > 0 ? 1 : 0);
            }
            patterns.add(pattern);
            lit += Long.bitCount(pattern);
            assertThat(daisies.lit(prop, 0, HEART) + daisies.lit(prop, PETALS, PIXELS))
                    .isZero();
        }
        assertThat(patterns).hasSize(PROPS);
        // 336 draws at one half: mean 168, standard deviation 9.2 (binomial); five of those either way.
        assertThat(lit).isBetween(168L - 46, 168L + 46);
    }
}
