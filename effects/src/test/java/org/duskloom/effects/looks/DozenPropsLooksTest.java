package org.duskloom.effects.looks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.duskloom.effects.looks.DozenDaisies.INNER;
import static org.duskloom.effects.looks.DozenDaisies.PIXELS;
import static org.duskloom.effects.looks.DozenDaisies.PROPS;
import static org.duskloom.effects.looks.DozenDaisies.RIM;
import static org.duskloom.effects.looks.DozenDaisies.TIPS;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Looks that a builder wants on a dozen props with rings, tips and arcs, judged by the frames alone. */
class DozenPropsLooksTest {
    @TempDir
    private Path folder;

    private DozenDaisies under(String cue) throws IOException {
        return DozenDaisies.under(cue, folder);
    }

    /** The head has just passed pixel k of n when k + 0.75 n-ths of a pass have gone by. */
    private static double headAt(int pixel, int pixels, double passSeconds) {
        return Math.round(100 * passSeconds * (pixel + 0.75) / pixels) / 100.0;
    }

    @Test
    void lightsRunRoundEveryPropByItself() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisies", "spread": "each", "effect": "chase", "with": {"tail": 0.2, "every": "3200ms"}}""");
        for (int head : new int[] {0, 7, 8, 20, 31}) {
            daisies.at(headAt(head, PIXELS, 3.2));
            for (int prop = 0; prop < PROPS; prop++) {
                assertThat(daisies.brightest(prop)).isEqualTo(head);
            }
        }
    }

    @Test
    void lightsRunThroughAllPropsAsOneLine() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisies", "effect": "chase", "with": {"tail": 0.02, "every": "3840ms"}}""");
        for (int head : new int[] {10, 32 + 12, 5 * 32 + 20, 11 * 32 + 31}) {
            daisies.at(headAt(head, PROPS * PIXELS, 3.84));
            for (int prop = 0; prop < PROPS; prop++) {
                assertThat(daisies.brightest(prop)).isEqualTo(prop == head / PIXELS ? head % PIXELS : -1);
            }
        }
    }

    @Test
    void twoColouredBandsCrossEachProp() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisies", "spread": "each", "effect": "sweep",
                 "with": {"palette": "red", "width": 0.5, "toward": 90, "every": "4s"}},
                {"on": "daisies", "spread": "each", "effect": "sweep",
                 "with": {"palette": "blue", "width": 0.5, "toward": 90, "every": "4s", "phase": 0.5}}""");
        // After 1 s of 4 the band that began in the lower half covers a quarter to three quarters of the height.
        daisies.at(1);
        for (int prop = 0; prop < PROPS; prop++) {
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                double height = DozenDaisies.y(prop, pixel) - DozenDaisies.y(prop, TIPS) + 600;
                double share = height / 600;
                if (Math.abs(share - 0.25) > 0.01 && Math.abs(share - 0.75) > 0.01) {
                    boolean red = share > 0.25 && share < 0.75;
                    assertThat(daisies.color(prop, pixel)).isEqualTo(red ? 0xFF0000 : 0x0000FF);
                }
            }
        }
    }

    @Test
    void lightsRunOnAllRings() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisy-*/rim", "spread": "each", "effect": "chase", "with": {"tail": 0.3, "every": "1600ms"}}""");
        for (int head = 0; head < 16; head++) {
            daisies.at(headAt(head, 16, 1.6));
            for (int prop = 0; prop < PROPS; prop++) {
                assertThat(daisies.brightest(prop)).isEqualTo(RIM + head);
                assertThat(daisies.lit(prop, INNER, RIM) + daisies.lit(prop, TIPS, PIXELS))
                        .isZero();
            }
        }
    }

    @Test
    void bandsCrossTheTipsOfEachProp() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisy-*/tips", "spread": "each", "effect": "sweep", "with": {"width": 0.5, "every": "2s"}}""");
        // At the start the band covers the left half: tips 5, 6 and 7 of 8, clockwise from the top, and no middle one.
        daisies.at(0);
        for (int prop = 0; prop < PROPS; prop++) {
            assertThat(daisies.lit(prop, 0, TIPS)).isZero();
            assertThat(daisies.lit(prop, TIPS + 1, TIPS + 4)).isZero();
            assertThat(daisies.lit(prop, TIPS + 5, TIPS + 8)).isEqualTo(3);
        }
    }

    @Test
    void lightsRunOnOneRingOfAllPropsAndAnotherOfSome() throws IOException {
        DozenDaisies daisies = under("""
                {"on": ["daisy-*/inner", "odd/rim"], "spread": "each", "effect": "chase",
                 "with": {"tail": 0.2, "every": "1600ms"}}""");
        daisies.at(headAt(4, 16, 1.6));
        Set<Integer> odd = Set.of(0, 2, 4);
        for (int prop = 0; prop < PROPS; prop++) {
            assertThat(daisies.lit(prop, INNER, RIM)).isPositive();
            assertThat(daisies.lit(prop, RIM, TIPS) > 0).isEqualTo(odd.contains(prop));
            assertThat(daisies.lit(prop, TIPS, PIXELS)).isZero();
        }
    }

    @Test
    void bandsCrossAllTipsAsOneCanvas() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisy-*/tips", "effect": "sweep", "with": {"width": 0.5, "every": "10s"}}""");
        // The canvas reaches from 300 left of the first column to 300 right of the last; the band covers its left half.
        daisies.at(0);
        for (int prop = 0; prop < PROPS; prop++) {
            for (int pixel = TIPS; pixel < PIXELS; pixel++) {
                boolean left = DozenDaisies.x(prop, pixel) < 1500;
                assertThat(daisies.light(prop, pixel) > 0).isEqualTo(left);
            }
        }
    }

    @Test
    void pixelsTwinkleOnAllRings() throws IOException {
        DozenDaisies daisies = under("""
                {"on": ["daisy-*/inner", "daisy-*/rim"], "effect": "twinkle",
                 "with": {"density": 0.5, "rise": 0, "fall": 0, "every": "1s"}}""");
        long lit = 0;
        Set<Long> patterns = new HashSet<>();
        daisies.at(5);
        for (int prop = 0; prop < PROPS; prop++) {
            long pattern = 0;
            for (int pixel = 0; pixel < TIPS; pixel++) {
                pattern = pattern * 2 + (daisies.light(prop, pixel) > 0 ? 1 : 0);
            }
            patterns.add(pattern);
            lit += Long.bitCount(pattern);
            assertThat(daisies.lit(prop, TIPS, PIXELS)).isZero();
        }
        assertThat(patterns).hasSize(PROPS);
        // 288 draws at one half: mean 144, standard deviation 8.5 (binomial); five of those either way.
        assertThat(lit).isBetween(144L - 43, 144L + 43);
    }

    @Test
    void arcsLightOneAfterTheOther() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisy-*/arcs/*", "spread": "each", "stagger": "100ms", "effect": "wash", "with": {"color": "white"}}""");
        for (int arcs : new int[] {1, 2, 5, 30, 48}) {
            daisies.at(arcs * 0.1 - 0.05);
            for (int arc = 0; arc < 48; arc++) {
                long lit = daisies.lit(arc / 4, RIM + 4 * (arc % 4), RIM + 4 * (arc % 4) + 4);
                assertThat(lit).as("arc %d of %d", arc, arcs).isEqualTo(arc < arcs ? 4 : 0);
            }
        }
    }

    /**
     * The stage is 2600 high and a drop crosses it in 2 s, so what passes the top of daisy-9 passes the top of daisy-5, 1000
     * below, 0.77 s later.
     */
    @Test
    void streaksFallOverTheWholeGroup() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisies", "effect": "shower", "with": {"vary": 0, "tail": 0.1, "density": 1, "lanes": 10, "every": "2s"}}""");
        long falling = 0;
        long rising = 0;
        for (int column = 0; column < 4; column++) {
            int high = 8 + column;
            int low = 4 + column;
            for (double seconds = 0; seconds < 9; seconds += 0.05) {
                int highNow = daisies.at(seconds).light(high, TIPS);
                int lowNow = daisies.light(low, TIPS);
                daisies.at(seconds + 0.77);
                falling += (long) highNow * daisies.light(low, TIPS);
                rising += (long) lowNow * daisies.light(high, TIPS);
            }
        }
        assertThat(falling).isPositive().isGreaterThan(3 * rising);
    }

    /** A ring of a third of the way: its light moves away from the middle of the group until it leaves it. */
    @Test
    void ringsGrowOverTheWholeGroup() throws IOException {
        DozenDaisies daisies = under("""
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
                                DozenDaisies.x(prop, pixel) - 1500, DozenDaisies.y(prop, pixel) - 1000);
                        lit++;
                    }
                }
            }
            assertThat(distance / lit).isGreaterThan(before);
            before = distance / lit;
        }
    }

    /**
     * One swag over the whole width of 3600 with a sag of a fifth of it, from the upper edge. A catenary of span 10 and sag 2
     * has a = 6.55862586753 (standard calculus; J. Bernoulli, Leibniz, Huygens 1691); here everything is 360 times as large.
     * The light is 360 thick: half of it, 180, to either side.
     */
    @Test
    void swagsHangOverTheWholeGroup() throws IOException {
        DozenDaisies daisies = under("""
                {"on": "daisies", "effect": "festoon",
                 "with": {"sag": 0.2, "height": 1, "thickness": 0.2, "soft": 0}}""");
        daisies.at(0);
        double a = 360 * 6.55862586753;
        for (int prop = 0; prop < PROPS; prop++) {
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                double distance = Double.POSITIVE_INFINITY;
                for (double x = -1800; x <= 1800; x += 2) {
                    double y = 2300 - 720 + a * StrictMath.cosh(x / a) - a;
                    distance = Math.min(
                            distance,
                            StrictMath.hypot(DozenDaisies.x(prop, pixel) - 1500 - x, DozenDaisies.y(prop, pixel) - y));
                }
                if (Math.abs(distance - 180) > 5) {
                    assertThat(daisies.light(prop, pixel) > 0)
                            .as("pixel %d of prop %d, %f from the swag", pixel, prop, distance)
                            .isEqualTo(distance < 180);
                }
            }
        }
    }
}
