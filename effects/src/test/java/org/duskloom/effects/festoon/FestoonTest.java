package org.duskloom.effects.festoon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FestoonTest {
    /** 41 by 41 pixels over the square from -1 to 1, row by row from the bottom. */
    private static final Canvas SQUARE = Canvases.of(square());

    private static double[][] square() {
        double[][] places = new double[41 * 41][];
        for (int i = 0; i < places.length; i++) {
            places[i] = new double[] {(i % 41 - 20) / 20.0, (i / 41 - 20) / 20.0};
        }
        return places;
    }

    private static int pixel(double x, double y) {
        return (int) Math.round(20 + 20 * x) + 41 * (int) Math.round(20 + 20 * y);
    }

    private static Look festoon() {
        return Look.of("festoon").seconds("every", 4).with("soft", 0).with("thickness", 0.12);
    }

    /** Straight at half the height, 0.12 thick: the rows at -0.05, 0 and 0.05 are lit. */
    @Test
    void stretchesALine() throws SettingException {
        float[] alpha = Painting.of(festoon().with("sag", 0).with("height", 0.5), SQUARE, 0)
                .alpha();
        for (int i = 0; i < alpha.length; i++) {
            assertThat(alpha[i]).isEqualTo(Math.abs(i / 41 - 20) <= 1 ? 1 : 0);
        }
    }

    /**
     * Edges of half of a thickness of 0.4: at a distance of 0.1, half way out, smoothstep(1/2) = 1/2; at 0.05, 0.84375.
     */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.05, 0.84375", "0.1, 0.5", "0.15, 0.15625", "0.2, 0", "-0.1, 0.5"})
    void softensItsEdges(double y, float level) throws SettingException {
        Look look = festoon()
                .with("sag", 0)
                .with("height", 0.5)
                .with("thickness", 0.4)
                .with("soft", 0.5);
        assertThat(Painting.of(look, SQUARE, 0).alpha()[pixel(0.3, y)]).isCloseTo(level, within(1e-5f));
    }

    /** From the top corners, a span of 2, a sag of 0.3 spans: the lowest point is at 1 - 0.6. */
    @Test
    void sags() throws SettingException {
        float[] alpha = Painting.of(festoon().with("height", 1), SQUARE, 0).alpha();
        assertThat(alpha[pixel(0, 0.4)]).isEqualTo(1);
        assertThat(alpha[pixel(0, 1)]).isZero();
        assertThat(alpha[pixel(0, 0.3)]).isZero();
        assertThat(alpha[pixel(-1, 1)]).isEqualTo(1);
        assertThat(alpha[pixel(1, 1)]).isEqualTo(1);
    }

    /**
     * Every pixel of a column is lit if and only if it lies near the chain of the textbook; here is one at 1/4 of the
     * span.
     */
    @Test
    void followsTheCatenary() throws SettingException {
        float[] alpha = Painting.of(festoon().with("height", 1).with("sag", 0.2), SQUARE, 0)
                .alpha();
        // Span 10, sag 2: a = 6.55862586753 (classical formula), so 2.5 from the middle y = a (cosh(2.5/a) - 1) =
        // 0.48225.
        double y = 6.55862586753 * (StrictMath.cosh(2.5 / 6.55862586753) - 1) / 5;
        double slope = StrictMath.sinh(2.5 / 6.55862586753);
        double fromTop = 0.4 - y;
        for (double at = -1; at <= 1.001; at += 0.05) {
            double distance = Math.abs(at - (1 - fromTop)) / Math.sqrt(1 + slope * slope);
            if (Math.abs(distance - 0.06) > 2e-3) {
                assertThat(alpha[pixel(-0.5, at)]).isEqualTo(distance < 0.06 ? 1 : 0);
            }
        }
    }

    /** Two swags of span 1 meet in the middle, and hang 0.3 through at the quarters. */
    @Test
    void hangsSeveral() throws SettingException {
        float[] alpha = Painting.of(festoon().with("height", 1).with("swags", 2), SQUARE, 0)
                .alpha();
        assertThat(alpha[pixel(0, 1)]).isEqualTo(1);
        assertThat(alpha[pixel(-0.5, 0.7)]).isEqualTo(1);
        assertThat(alpha[pixel(0.5, 0.7)]).isEqualTo(1);
        assertThat(alpha[pixel(0.5, 1)]).isZero();
    }

    /** Two straight spans that rise by half a span each: from (-1, -1) over (0, -0.5) to (1, 0). */
    @Test
    void climbs() throws SettingException {
        Look look = festoon().with("swags", 2).with("sag", 0).with("rise", 0.5).with("height", 0);
        float[] alpha = Painting.of(look, SQUARE, 0).alpha();
        assertThat(alpha[pixel(-1, -1)]).isEqualTo(1);
        assertThat(alpha[pixel(-0.5, -0.75)]).isEqualTo(1);
        assertThat(alpha[pixel(0, -0.5)]).isEqualTo(1);
        assertThat(alpha[pixel(1, 0)]).isEqualTo(1);
        assertThat(alpha[pixel(1, -1)]).isZero();
    }

    /**
     * Colours run along the length: on a straight line, a quarter of the way from the left, 3/4 red and 1/4 blue. After
     * 1 s of 4, φ = 1/4, the pattern has moved a quarter of the line: red there.
     */
    @Test
    void runsColoursAlong() throws SettingException {
        Look look = festoon().with("sag", 0).with("height", 0.5).palette("red", "blue");
        Painting now = Painting.of(look, SQUARE, 0);
        assertThat(now.red()[pixel(-0.5, 0)]).isCloseTo(0.75f, within(2e-5f));
        assertThat(now.blue()[pixel(-0.5, 0)]).isCloseTo(0.25f, within(2e-5f));
        Painting later = Painting.of(look, SQUARE, 1);
        assertThat(later.red()[pixel(-0.5, 0)]).isCloseTo(1, within(2e-5f));
        assertThat(later.red()[pixel(0, 0)]).isCloseTo(0.75f, within(2e-5f));
        assertThat(Painting.of(look, SQUARE, 4).isSame(now)).isTrue();
    }

    /**
     * Span 10, length 12: after 3 of 12, a quarter of the length, x is 2.17377412904 (classical formula), so on a span
     * of 2 the pixel nearest to that place, at x = -1 + 0.4348, y = 1 - 0.4094, has a quarter of the colours behind it.
     */
    @Test
    void measuresAlongTheChain() throws SettingException {
        Look look = festoon().with("height", 1).with("sag", 0.292343797601).palette("red", "blue");
        double[][] three = {{-1, 1}, {1, 1}, {-1 + 0.434754825808, 1 - (2.923437976 - 0.876561455154) / 5}};
        Painting painting = Painting.of(look, Canvases.of(three), 0);
        assertThat(painting.blue()[2]).isCloseTo(0.25f, within(2e-4f));
        assertThat(painting.alpha()[2]).isEqualTo(1);
    }

    /** A picture turned by a quarter with {@code toward} turned along is the same, pixel by pixel, to the bit. */
    @Test
    void turnsWithTheStage() throws SettingException {
        double[][] places = Canvases.scattered(300);
        Canvas turned = Canvases.of(Canvases.moved(places, 0, -1, 1, 0));
        Look look = festoon()
                .with("swags", 3)
                .with("rise", 0.1)
                .with("thickness", 0.6)
                .palette("red", "gold", "navy");
        Painting before = Painting.of(look, Canvases.of(places), 0.7);

        assertThat(Painting.of(look.with("toward", 90), turned, 0.7).isSame(before))
                .isTrue();
        assertThat(before.alpha()).contains(1);
    }

    /** Twice as large a stage under the fit "none", with twice the thickness: the same, as both numbers are exact. */
    @Test
    void doesNotDependOnTheScale() throws SettingException {
        double[][] places = Canvases.scattered(300);
        Look look = festoon().with("swags", 3).with("thickness", 0.5).palette("red", "gold", "navy");
        Painting before = Painting.of(look, Canvases.of(places), 0.7);
        Canvas doubled = Canvases.of(Canvases.moved(places, 2, 0, 0, 2));

        assertThat(Painting.of(look.with("thickness", 1), doubled, 0.7).isSame(before))
                .isTrue();
    }

    /**
     * Three straight lines from 3/4 of the height on, each 3/8 of the height under the one before: at 0.5, -0.25 and
     * -1. Each is 0.12 thick, so rows of pixels at most 0.06 away are lit; every row has all colours from end to end.
     */
    @Test
    void hangsRowsUnderEachOther() throws SettingException {
        Look look =
                festoon().with("sag", 0).with("rows", 3).with("row-gap", 0.375).palette("red", "blue");
        Painting painting = Painting.of(look, SQUARE, 0);
        for (int i = 0; i < 41 * 41; i++) {
            double y = (i / 41 - 20) / 20.0;
            double distance = Math.min(Math.abs(y - 0.5), Math.min(Math.abs(y + 0.25), Math.abs(y + 1)));
            assertThat(painting.alpha()[i]).as("%s", y).isEqualTo(distance < 0.06 ? 1 : 0);
            if (distance < 0.06) {
                assertThat(painting.blue()[i]).isCloseTo((i % 41) / 40f, within(2e-5f));
            }
        }
    }

    /**
     * Rows of two swags with a sag of a fifth of a span of 1, whose lowest points lie at 1 - 0.2 and, half the height
     * of 2 lower, at -0.2; a = 0.655862586753 (classical formula). A quarter of a span from the middle, y = a
     * (cosh(0.25/a) - 1) = 0.048225.
     */
    @Test
    void hangsRowsOfCatenaries() throws SettingException {
        double a = 0.655862586753;
        double aside = a * (StrictMath.cosh(0.25 / a) - 1);
        double slope = StrictMath.sinh(0.25 / a);
        double[][] places = {
            {-1, 1},
            {1, 1},
            {-1, -1},
            {-0.5, 0.8},
            {-0.5, -0.2},
            {0.25, 0.8 + aside},
            {0.25, -0.2 + aside},
            {0.25, -0.2 + aside + 0.055 * Math.sqrt(1 + slope * slope)},
            {0.25, -0.2 + aside + 0.065 * Math.sqrt(1 + slope * slope)},
            {-0.5, 0.3},
            {0.75, 0.3}
        };
        Look look = festoon()
                .with("height", 1)
                .with("sag", 0.2)
                .with("swags", 2)
                .with("rows", 2)
                .with("row-gap", 0.5);
        assertThat(Painting.of(look, Canvases.of(places), 0).alpha()).containsExactly(1, 1, 0, 1, 1, 1, 1, 1, 0, 0, 0);
    }

    /** Where two rows reach a pixel, the nearer one lights it, in the colours of the place nearest to it. */
    @Test
    void lightsByTheNearestRow() throws SettingException {
        Look look = festoon()
                .with("sag", 0)
                .with("rise", 1)
                .with("height", 0.5)
                .with("rows", 2)
                .with("row-gap", 0.5)
                .with("thickness", 2)
                .palette("red", "blue");
        // Straight lines y = x + 1 and y = x from x = -1 on. The foot of (0, 0.6) on the upper is (-0.2, 0.8), that of
        // (0, 0.4) on
        // the lower (0.2, 0.2): shares of 0.4 and 0.6. The other lines are farther away.
        double[][] places = {{-1, -1}, {1, 1}, {0, 0.6}, {0, 0.4}};
        Painting painting = Painting.of(look, Canvases.of(places), 0);
        assertThat(painting.blue()[2]).isCloseTo(0.4f, within(2e-5f));
        assertThat(painting.blue()[3]).isCloseTo(0.6f, within(2e-5f));
    }

    /** One row is what there was without the word; rows that hang in one place are one. */
    @Test
    void hangsOneRowUnlessToldOtherwise() throws SettingException {
        Look look = festoon().with("swags", 3).palette("red", "gold", "navy");
        Painting one = Painting.of(look, SQUARE, 0.7);
        assertThat(Painting.of(look.with("rows", 1).with("row-gap", 3), SQUARE, 0.7)
                        .isSame(one))
                .isTrue();
        assertThat(Painting.of(look.with("rows", 5).with("row-gap", 0), SQUARE, 0.7)
                        .isSame(one))
                .isTrue();
    }

    /** At 1 s the moving numbers have the values of the still ones. */
    @Test
    void swings() throws SettingException {
        Look moving = festoon()
                .moving("sag", 0.1, 0.5, 2)
                .moving("rise", -0.5, 0.5, 2)
                .moving("height", 0.5, 1, 2)
                .moving("rows", 1, 3, 2)
                .moving("row-gap", 0, 0.5, 2)
                .moving("thickness", 0, 0.4, 2);
        Look still = festoon()
                .with("sag", 0.3)
                .with("rise", 0)
                .with("height", 0.75)
                .with("rows", 2)
                .with("row-gap", 0.25)
                .with("thickness", 0.2);

        assertThat(Painting.of(moving, SQUARE, 1).isSame(Painting.of(still, SQUARE, 1)))
                .isTrue();
    }

    /** Pixels one above the other have no span: those near the height of the ends are lit. */
    @Test
    void hangsOnAPost() throws SettingException {
        Canvas post = Canvases.of(Canvases.moved(Canvases.row(9), 0, 0, 1, 0));
        assertThat(Painting.of(festoon().with("height", 0.5), post, 0).alpha())
                .containsExactly(0, 0, 0, 0, 1, 0, 0, 0, 0);
        Look rows = festoon().with("height", 1).with("rows", 3).with("row-gap", 0.25);
        assertThat(Painting.of(rows, post, 0).alpha()).containsExactly(0, 0, 0, 0, 1, 0, 1, 0, 1);
    }

    /** Each member has its own: the same on a member half as large, where the thickness reaches twice as far. */
    @Test
    void spansEachMember() throws SettingException {
        Canvas two = new Canvases()
                .member("left", new double[][] {{-1, 0}, {0, 0}, {1, 0}, {0, -1}, {0, 1}})
                .member("right", new double[][] {{0, 5}, {0.5, 5}, {1, 5}, {0.5, 4.5}, {0.5, 5.5}})
                .build();
        assertThat(Painting.of(festoon().with("sag", 0).with("height", 0.5), two, 0)
                        .alpha())
                .containsExactly(1, 1, 1, 0, 0, 1, 1, 1, 0, 0);
    }
}
