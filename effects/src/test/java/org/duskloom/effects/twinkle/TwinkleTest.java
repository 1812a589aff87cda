package org.duskloom.effects.twinkle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
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

class TwinkleTest {
    private static final int PIXELS = 2000;
    private static final Canvas MANY = Canvases.of(Canvases.scattered(PIXELS));

    /** Full light over the whole window, so that what is painted is whether the window is lit. */
    private static Look flat(double density) {
        return Look.of("twinkle")
                .seconds("every", 2)
                .with("density", density)
                .with("rise", 0)
                .with("fall", 0);
    }

    /**
     * 2000 pixels in 50 windows are 100,000 independent draws of probability 0.3. Their number is binomial with the
     * standard deviation sqrt(n p (1 - p)) = 145; five of them are passed by one in 1.7 million samples (normal
     * approximation).
     */
    @Test
    void lightsTheShareThatDensitySays() throws SettingException {
        Brush brush = flat(0.3).on(MANY).open();
        int lit = 0;
        for (int window = 0; window < 50; window++) {
            lit += lit(Painting.of(brush, MANY, 2 * window + 1, Patch.CAPACITY, 0));
        }
        assertThat(lit).isBetween(30_000 - 725, 30_000 + 725);
    }

    @Test
    void lightsAllOrNone() throws SettingException {
        assertThat(lit(Painting.of(flat(1), MANY, 3.3))).isEqualTo(PIXELS);
        assertThat(lit(Painting.of(flat(0), MANY, 3.3))).isZero();
    }

    /**
     * In a pass each pixel comes to its next window once, at a time of its own. From a frame to the one a tenth of a
     * pass later, a tenth of the pixels change windows, and of these 2 p (1 - p) = 0.42 change between lit and dark: 84
     * of 2000, with a standard deviation below sqrt(84) = 9.2. Five of them each way.
     */
    @Test
    void movesTheWindowsOfThePixelsAgainstEachOther() throws SettingException {
        float[] before = Painting.of(flat(0.3), MANY, 1).alpha();
        float[] after = Painting.of(flat(0.3), MANY, 1.2).alpha();
        int changed = 0;
        for (int i = 0; i < PIXELS; i++) {
            changed += before[i] == after[i] ? 0 : 1;
        }
        assertThat(changed).isBetween(84 - 46, 84 + 46);
    }

    /**
     * With density 1, rise and fall 1/2, the level of f is a triangle, 2 f up to 1/2 and 2 (1 - f) from there: as the
     * offsets are even over [0, 1), so are the levels. By Kolmogorov and Smirnov, the greatest distance between the
     * distribution of 2000 such levels and an even one is below 1.95 / sqrt(2000) = 0.0436 in 999 of 1000 samples.
     */
    @Test
    void risesAndFalls() throws SettingException {
        Look look = flat(1).with("rise", 0.5).with("fall", 0.5);
        float[] levels = Painting.of(look, MANY, 0.77).alpha();
        Arrays.sort(levels);
        for (int i = 0; i < PIXELS; i++) {
            assertThat((double) levels[i]).isCloseTo((i + 0.5) / PIXELS, within(0.0436));
        }
    }

    /**
     * One pixel over a pass of 8 s: the level climbs with slope 1 / (0.25 · 8 s) until full, and falls with 1 / (0.5 ·
     * 8 s).
     */
    @Test
    void hasTheSlopesOfItsEdges() throws SettingException {
        Canvas one = Canvases.of(Canvases.row(1));
        Look look = flat(1).seconds("every", 8).with("rise", 0.25).with("fall", 0.5);
        int climbing = 0;
        int falling = 0;
        int full = 0;
        for (int step = 0; step < 800; step++) {
            double slope = (level(look, one, (step + 1) / 100.0) - level(look, one, step / 100.0)) * 100;
            climbing += Math.abs(slope - 0.5) < 1e-3 ? 1 : 0;
            falling += Math.abs(slope + 0.25) < 1e-3 ? 1 : 0;
            full += slope == 0 ? 1 : 0;
        }
        assertThat(climbing).isBetween(197, 201);
        assertThat(falling).isBetween(397, 401);
        assertThat(full).isBetween(197, 201);
    }

    /** A window keeps its colour, and another window draws another one: places on red to blue, the sum being 1. */
    @Test
    void drawsAColourForEachWindow() throws SettingException {
        Look look = flat(1).palette("red", "blue");
        Set<Float> blues = new HashSet<>();
        for (int window = 0; window < 40; window++) {
            Painting painting = Painting.of(look, Canvases.of(Canvases.row(1)), 2 * window + 1);
            assertThat(painting.red()[0] + painting.blue()[0]).isCloseTo(1, within(2e-5f));
            blues.add(painting.blue()[0]);
        }
        assertThat(blues).hasSizeGreaterThan(30);
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
        Look look = Look.of("twinkle").palette("red", "gold", "white");
        for (double second : new double[] {0, 1.3, 55.5}) {
            Painting first = Painting.of(look, alone, second);
            Painting second2 = Painting.of(look, together, second);
            assertThat(Arrays.copyOfRange(second2.green(), 77, 377)).containsExactly(first.green());
            assertThat(Arrays.copyOfRange(second2.alpha(), 77, 377)).containsExactly(first.alpha());
        }
    }

    /**
     * A density of 0 that becomes 1 at once after 4 s: a window that starts before stays dark, one that starts later is
     * lit. At 4 s all windows started before; at 6 s, a pass later, all started later.
     */
    @Test
    void readsADensityThatMovesWhenAWindowStarts() throws SettingException {
        Look look = flat(1).moving("density", -1e6, 1e6, 8);
        assertThat(lit(Painting.of(look, MANY, 4))).isZero();
        assertThat(lit(Painting.of(look, MANY, 5))).isBetween(900, 1100);
        assertThat(lit(Painting.of(look, MANY, 6.001))).isEqualTo(PIXELS);
    }

    @Test
    void refusesEdgesLongerThanThePass() {
        assertThatThrownBy(() -> flat(1).with("rise", 0.7).with("fall", 0.6).on(MANY))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("0.7")
                .hasMessageContaining("0.6");
    }

    private static float level(Look look, Canvas canvas, double second) throws SettingException {
        return Painting.of(look, canvas, second).alpha()[0];
    }

    private static int lit(Painting painting) {
        int lit = 0;
        for (float alpha : painting.alpha()) {
            lit += alpha > 0 ? 1 : 0;
        }
        return lit;
    }

    /**
     * The light of a lit pixel over a whole window: the area of a trapezoid, 1 - (rise + fall) / 2. By the rule of the
     * middles a straight line is summed up exactly, but for the steps in which it bends.
     */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.2, 0.5", "1, 0", "0, 1", "0.3, 0.7", "0.001, 0.9"})
    void givesTheLightOfATrapezoid(double rise, double fall) throws SettingException {
        Look look = flat(1).with("rise", rise).with("fall", fall);
        Brush brush = look.on(Canvases.of(Canvases.row(1))).open();
        double sum = 0;
        for (int step = 0; step < 1000; step++) {
            sum += Painting.of(brush, Canvases.of(Canvases.row(1)), (step + 0.5) / 500, Patch.CAPACITY, 0)
                    .alpha()[0];
        }
        assertThat(sum / 1000).isCloseTo(1 - (rise + fall) / 2, within(2e-3));
    }

    /** Edges that grow beyond the pass together cut the top off: where rise and fall meet it is 1 / (rise + fall). */
    @Test
    void isNeverFullWhereMovingEdgesOverlap() throws SettingException {
        Look look = flat(1).moving("rise", 0, 1, 2).moving("fall", 0, 1, 2);
        float[] levels = Painting.of(look, MANY, 2).alpha();
        Arrays.sort(levels);
        assertThat(levels[PIXELS - 1]).isCloseTo(0.5f, within(5e-3f));
        assertThat(levels[0]).isCloseTo(0, within(5e-3f));
    }

    /** Backward the same windows come in the other order: after t what a phase of -t shows. */
    @Test
    void runsBackwardThroughTheSameWindows() throws SettingException {
        Look look = Look.of("twinkle").seconds("every", 2).palette("red", "gold", "white");
        Painting backward = Painting.of(look.flag("reverse"), MANY, 6.5);
        Look stopped = Look.of("twinkle").with("passes", 0).palette("red", "gold", "white");
        assertThat(Painting.of(stopped.with("phase", -3.25), MANY, 1).isSame(backward))
                .isTrue();
        Look forward = Look.of("twinkle").seconds("every", 2).palette("red", "gold", "white");
        assertThat(Painting.of(forward, MANY, 6.5).isSame(backward)).isFalse();
    }
}
