package org.duskloom.effects.shower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShowerTest {
    private static final int LANES = 500;

    /** One pixel in each of 500 lanes, all side by side, so that each is at the beginning of its lane. */
    private static final Canvas LINE = Canvases.of(Canvases.row(LANES));

    /** 101 pixels from the bottom (first) to the top. */
    private static final Canvas COLUMN = Canvases.of(Canvases.moved(Canvases.row(101), 0, 0, 1, 0));

    /** Passes of 1 s, tails as long as the way, all drops alike. */
    private static Look even(double density) {
        return Look.of("shower")
                .seconds("every", 1)
                .with("density", density)
                .with("lanes", LANES)
                .with("tail", 1)
                .with("vary", 0);
    }

    /**
     * With slots of one pass and a tail of one pass, at a whole number of passes just the drop of the slot before is
     * seen. So 100 such frames are 50,000 independent draws of probability 0.3: binomial with the standard deviation
     * sqrt(n p (1 - p)) = 102; five of them are passed by one in 1.7 million samples (normal approximation).
     */
    @Test
    void hasAsManyDropsAsDensitySays() throws SettingException {
        Brush brush = even(0.3).on(LINE).open();
        int lit = 0;
        for (int pass = 0; pass < 100; pass++) {
            lit += lit(Painting.of(brush, LINE, pass, Patch.CAPACITY, 0));
        }
        assertThat(lit).isBetween(15_000 - 512, 15_000 + 512);
    }

    /**
     * At density 1 each slot has a drop, starting anywhere in it: the levels at a whole number of passes are even over
     * [0, 1]. By Kolmogorov and Smirnov, the greatest distance between the distribution of 500 such levels and an even
     * one is below 1.95 / sqrt(500) = 0.0872 in 999 of 1000 samples.
     */
    @Test
    void startsDropsAnywhereInTheirSlots() throws SettingException {
        float[] levels = Painting.of(even(1), LINE, 7).alpha();
        Arrays.sort(levels);
        for (int i = 0; i < LANES; i++) {
            assertThat((double) levels[i]).isCloseTo((i + 0.5) / LANES, within(0.0872));
        }
    }

    @Test
    void fallsDryAtDensityZero() throws SettingException {
        assertThat(lit(Painting.of(even(0), LINE, 3.3))).isZero();
    }

    /**
     * Drops that fall alike move the picture as it is: in a tenth of a pass, 10 of the 100 gaps between pixels down.
     */
    @Test
    void falls() throws SettingException {
        Look look = Look.of("shower")
                .seconds("every", 2)
                .with("vary", 0)
                .with("density", 3)
                .with("tail", 0.25);
        float[] before = Painting.of(look, COLUMN, 5).alpha();
        float[] after = Painting.of(look, COLUMN, 5.2).alpha();
        assertThat(Arrays.copyOfRange(after, 0, 91))
                .containsExactly(Arrays.copyOfRange(before, 10, 101), within(1e-5f));
        assertThat(lit(Painting.of(look, COLUMN, 5))).isGreaterThan(20);
    }

    /**
     * Behind a head, up the column, each pixel has 1 / (100 · 0.25) less light than the one before, until there is
     * none.
     */
    @Test
    void drawsStraightTailsBehindHeads() throws SettingException {
        Look look = Look.of("shower")
                .seconds("every", 2)
                .with("vary", 0)
                .with("density", 3)
                .with("tail", 0.25);
        float[] alpha = Painting.of(look, COLUMN, 5).alpha();
        int heads = 0;
        for (int i = 1; i <= 100; i++) {
            float expected = Math.max(0, alpha[i - 1] - 0.04f);
            boolean head = alpha[i] > expected + 1e-4;
            heads += head ? 1 : 0;
            if (head) {
                assertThat(alpha[i]).isGreaterThan(0.96f - 1e-4f);
            } else {
                assertThat(alpha[i]).isCloseTo(expected, within(1e-4f));
            }
        }
        assertThat(heads).isBetween(1, 6);
    }

    /**
     * Toward the other side it is another shower; backward it is the same one seen in a mirror, tails behind the heads.
     */
    @Test
    void fallsTheOtherWayBackward() throws SettingException {
        Look look = Look.of("shower").with("density", 3);
        float[] forward = Painting.of(look, COLUMN, 1.3).alpha();
        float[] backward = Painting.of(Look.of("shower").with("density", 3).flag("reverse"), COLUMN, 1.3)
                .alpha();
        for (int i = 0; i <= 100; i++) {
            assertThat(backward[100 - i]).isCloseTo(forward[i], within(1e-5f));
        }
    }

    /**
     * Slow drops need up to (1 + vary) times as long: the level of the first drop at the far end says how long it fell.
     */
    @Test
    void keepsTheColourOfADropOnItsWay() throws SettingException {
        Look look = Look.of("shower")
                .seconds("every", 2)
                .with("vary", 0)
                .with("density", 3)
                .with("along", "drop")
                .palette("red", "blue");
        Painting before = Painting.of(look, COLUMN, 5);
        Painting after = Painting.of(look, COLUMN, 5.2);
        for (int i = 10; i <= 100; i++) {
            assertThat(after.blue()[i - 10]).isCloseTo(before.blue()[i], within(1e-5f));
        }
        assertThat(before.blue()).isNotEqualTo(before.alpha());
    }

    /** Along the tail: red at the head, blue at its end; the level is 1 - u, the share of blue u. */
    @Test
    void coloursTheTail() throws SettingException {
        Painting painting = Painting.of(Look.of("shower").with("density", 3).palette("red", "blue"), COLUMN, 1);
        for (int i = 0; i <= 100; i++) {
            float level = painting.alpha()[i];
            assertThat(painting.blue()[i]).isCloseTo(level * (1 - level), within(3e-5f));
            assertThat(painting.red()[i]).isCloseTo(level * level, within(3e-5f));
        }
    }

    /**
     * A density of 0 that becomes 10 at once after 4 s: no drop starts before. A tenth of a pass later none has come
     * farther than a tenth of the way down, and some have started.
     */
    @Test
    void readsADensityThatMovesWhenADropStarts() throws SettingException {
        double[][] block = new double[200][];
        for (int i = 0; i < 200; i++) {
            block[i] = new double[] {i % 20 / 10.0 - 1, 1 - i / 20 * 2 / 9.0};
        }
        Canvas canvas = Canvases.of(block);
        Look look = Look.of("shower").seconds("every", 2).with("lanes", 20).moving("density", -1e7, 1e7, 8);
        assertThat(lit(Painting.of(look, canvas, 4))).isZero();
        float[] soon = Painting.of(look, canvas, 4.2).alpha();
        assertThat(Arrays.copyOfRange(soon, 20, 200)).containsOnly(0);
        float[] top = Arrays.copyOfRange(soon, 0, 20);
        Arrays.sort(top);
        // A tail of 0.4 of the way has lost at most a quarter of its light a tenth of the way behind its head.
        assertThat(top[19]).isGreaterThanOrEqualTo(0.75f);
    }

    /** A picture turned by a quarter with {@code toward} turned along is the same, pixel by pixel, to the bit. */
    @Test
    void turnsWithTheStage() throws SettingException {
        double[][] places = Canvases.scattered(300);
        Canvas turned = Canvases.of(Canvases.moved(places, 0, -1, 1, 0));
        Look look = Look.of("shower").with("width", 0.7).with("soft", 0.2).palette("white", "navy");
        Painting before = Painting.of(look, Canvases.of(places), 0.7);

        assertThat(Painting.of(look.with("toward", 0), turned, 0.7).isSame(before))
                .isTrue();
    }

    /** Another prop, before or after it, changes nothing on this one. */
    @Test
    void staysTheSameBesideOtherProps() throws SettingException {
        Canvas alone = new Canvases().member("daisy", Canvases.scattered(300)).build();
        Canvas together = new Canvases()
                .member("fence", Canvases.scattered(77))
                .member("daisy", Canvases.scattered(300))
                .member("pond", Canvases.scattered(41))
                .build();
        Look look = Look.of("shower").palette("red", "gold");
        for (double second : new double[] {0, 1.3, 55.5}) {
            assertThat(Arrays.copyOfRange(Painting.of(look, together, second).green(), 77, 377))
                    .containsExactly(Painting.of(look, alone, second).green());
        }
    }

    /**
     * At 1 s the moving numbers have these values; then lanes, width and direction give what they give standing still.
     */
    @Test
    void movesItsLanes() throws SettingException {
        Canvas canvas = Canvases.of(Canvases.scattered(300));
        Look moving = Look.of("shower")
                .moving("lanes", 10, 20, 2)
                .moving("width", 0.25, 0.75, 2)
                .moving("toward", 180, 360, 2)
                .moving("tail", 0, 1, 2);
        Look still = Look.of("shower")
                .with("lanes", 15)
                .with("width", 0.5)
                .with("toward", 270)
                .with("tail", 0.5);

        assertThat(Painting.of(moving, canvas, 1).isSame(Painting.of(still, canvas, 1)))
                .isTrue();
    }

    /** Speeds of drops are between 1 and 1 / (1 + vary): their heads stay within these ways of one pass. */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.5, 0.6666667", "1, 0.5"})
    void letsDropsFallUnlike(double vary, double slowest) throws SettingException {
        // Of a drop that is seen at s at one instant and at s + v/10 a tenth of a pass later, v is the speed.
        double[][] column = Canvases.moved(Canvases.row(2001), 0, 0, -1, 0);
        Canvas canvas = Canvases.of(column);
        Look look = Look.of("shower")
                .seconds("every", 1)
                .with("vary", vary)
                .with("density", 0.1)
                .with("tail", 0.1);
        double least = 2;
        double most = 0;
        for (int pass = 0; pass < 400; pass++) {
            int head = head(Painting.of(look, canvas, pass + 0.4).alpha());
            int later = head(Painting.of(look, canvas, pass + 0.5).alpha());
            if (head > 0 && head < 1700 && later > head) {
                least = Math.min(least, (later - head) / 200.0);
                most = Math.max(most, (later - head) / 200.0);
            }
        }
        assertThat(least).isBetween(slowest - 0.011, slowest + 0.1);
        assertThat(most).isBetween(0.9, 1.011);
    }

    /** The pixel that the farthest head has just passed; 0 if there is none. */
    private static int head(float[] alpha) {
        int pixel = alpha.length - 1;
        while (pixel > 0 && alpha[pixel] == 0) {
            pixel--;
        }
        return pixel;
    }

    private static int lit(Painting painting) {
        int lit = 0;
        for (float alpha : painting.alpha()) {
            lit += alpha > 0 ? 1 : 0;
        }
        return lit;
    }

    /**
     * With slots of one pass, of which a share d holds a drop that starts anywhere in it, a head is less than x of the
     * way ahead of a place with the probability d x - d² x³ / 6 (a stretch of x lies in one slot or in two, each cut as
     * likely as any other). The level is 1 - x / tail, so its mean is 1 / tail times the integral of that from 0 to
     * tail: d tail / 2 - d² tail³ / 24. Of 500 lanes at 200 times three passes and a bit apart, 100,000 independent
     * levels with a standard deviation below 1/2, the mean is within 0.008 of it but once in 1.7 million times.
     */
    @ParameterizedTest
    @CsvSource({"1, 1", "0.4, 1", "1, 0.3", "0.05, 0.6"})
    void hasAsMuchLightAsDensityAndTailSay(double density, double tail) throws SettingException {
        Brush brush = even(density).with("tail", tail).on(LINE).open();
        double sum = 0;
        for (int i = 0; i < 200; i++) {
            for (float level : Painting.of(brush, LINE, 3 * i + i / 200.0, Patch.CAPACITY, 0)
                    .alpha()) {
                sum += level;
            }
        }
        double mean = density * tail / 2 - density * density * tail * tail * tail / 24;
        assertThat(sum / 200 / LANES).isCloseTo(mean, within(0.008));
    }

    /** Ahead by a phase it is where it will be then, to the bit; each pass has its own drops. */
    @Test
    void isAheadByItsPhase() throws SettingException {
        Canvas canvas = Canvases.of(Canvases.scattered(300));
        Look look = Look.of("shower").seconds("every", 2).with("vary", 0.7).palette("white", "navy");
        Painting later = Painting.of(look, canvas, 14.5);
        assertThat(Painting.of(look.with("phase", 7.125), canvas, 0.25).isSame(later))
                .isTrue();
        assertThat(Painting.of(look.with("phase", 6.125), canvas, 0.25).isSame(later))
                .isFalse();
    }

    /** Drops belong to lanes and not to pixels: wired in another order, every place keeps its light. */
    @Test
    void doesNotDependOnTheWiring() throws SettingException {
        double[][] places = Canvases.scattered(300);
        double[][] otherwise = new double[300][];
        for (int i = 0; i < 300; i++) {
            otherwise[i] = places[i * 7 % 300];
        }
        Look look = Look.of("shower").with("density", 2).with("along", "drop").palette("red", "blue");
        Painting before = Painting.of(look, Canvases.of(places), 4.2);
        Painting after = Painting.of(look, Canvases.of(otherwise), 4.2);
        for (int i = 0; i < 300; i++) {
            assertThat(after.blue()[i]).isEqualTo(before.blue()[i * 7 % 300]);
            assertThat(after.alpha()[i]).isEqualTo(before.alpha()[i * 7 % 300]);
        }
        assertThat(lit(before)).isGreaterThan(100);
    }

    /** Two props of one form under one shower have drops of their own: they do not flash alike. */
    @Test
    void rainsOnEachPropByItself() throws SettingException {
        Canvas two = new Canvases()
                .member("left", Canvases.grid(20, 20))
                .member("right", Canvases.grid(20, 20))
                .build();
        float[] alpha = Painting.of(Look.of("shower"), two, 3.3).alpha();
        assertThat(Arrays.copyOfRange(alpha, 400, 800)).isNotEqualTo(Arrays.copyOf(alpha, 400));
    }
}
