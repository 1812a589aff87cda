package org.duskloom.effects.chase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChaseTest {
    private static final Offset<Float> ROUNDING = within(2e-5f);

    /** Eight pixels: s = 1/16, 3/16, ... 15/16, exact in binary. */
    private static final Canvas ROW = Canvases.of(Canvases.row(8));

    /**
     * At φ = 5/16, the head is on the third pixel (s = 5/16): u = 0, level 1. The pixels behind it lie 1/8 and 1/4
     * behind: with a tail of 1/2, levels 3/4 and 1/2. The last pixel (s = 15/16) lies frac(5/16 - 15/16) = 3/8 behind:
     * level 1/4. The one before it lies 1/2 behind, at the end of the tail: 0.
     */
    @Test
    void drawsATail() throws SettingException {
        assertThat(Painting.of(chase(), ROW, 10 / 16.0).alpha())
                .containsExactly(new float[] {0.5f, 0.75f, 1, 0, 0, 0, 0, 0.25f}, ROUNDING);
    }

    /** With {@code fade} 0 the same pixels are fully lit. */
    @Test
    void drawsABlock() throws SettingException {
        assertThat(Painting.of(chase().with("fade", 0), ROW, 10 / 16.0).alpha())
                .containsExactly(1, 1, 1, 0, 0, 0, 0, 1);
    }

    /**
     * Two heads stand half the row apart: at φ = 5/16 on the third and the seventh pixel; a tail of 1/4 gap is one
     * pixel.
     */
    @Test
    void runsTwoDots() throws SettingException {
        Look dots = chase().with("heads", 2).with("tail", 0.25).with("fade", 0);
        assertThat(Painting.of(dots, ROW, 10 / 16.0).alpha()).containsExactly(0, 0, 1, 0, 0, 0, 1, 0);
    }

    /** One pass is the whole order, and so is the time of one pass: 2 s later all is the same. */
    @Test
    void repeatsAfterAPass() throws SettingException {
        Painting now = Painting.of(chase(), ROW, 0.625);
        assertThat(Painting.of(chase(), ROW, 2.625).isSame(now)).isTrue();
        assertThat(Painting.of(chase(), ROW, 20.625).isSame(now)).isTrue();
    }

    /** Three passes within a cue of ten seconds: at 10/3 s one has gone by. The phase adds to it. */
    @Test
    void countsPasses() throws SettingException {
        Look three = Look.of("chase").with("passes", 3);
        assertThat(Painting.of(three, ROW, 2.5).alpha())
                .containsExactly(Painting.of(chase(), ROW, 1.5).alpha(), ROUNDING);
        assertThat(Painting.of(Look.of("chase").with("passes", 0).with("phase", 0.75), ROW, 7)
                        .isSame(Painting.of(chase(), ROW, 1.5)))
                .isTrue();
    }

    /** Backward, φ is negated: at 1.375 s of 2 s it is -11/16, which is 5/16 modulo 1. */
    @Test
    void runsBackward() throws SettingException {
        assertThat(Painting.of(chase().flag("reverse"), ROW, 1.375).isSame(Painting.of(chase(), ROW, 0.625)))
                .isTrue();
    }

    /** The palette's first colour is at the head, the last at the end of the tail; half-way, half of each. */
    @Test
    void coloursTheTail() throws SettingException {
        Painting painting = Painting.of(chase().palette("red", "blue").with("fade", 0), ROW, 10 / 16.0);

        assertThat(painting.red()[2]).isCloseTo(1, ROUNDING);
        assertThat(painting.red()[0]).isCloseTo(0.5f, ROUNDING);
        assertThat(painting.blue()[0]).isCloseTo(0.5f, ROUNDING);
    }

    /** Each member has its own order: members of 2 and 4 pixels, φ = 1/4; the heads stand at s = 1/4 = 0.5 / 2. */
    @Test
    void runsAlongEachMember() throws SettingException {
        Canvas two = new Canvases()
                .member("a", Canvases.row(2))
                .member("b", Canvases.row(4))
                .build();
        Look dot = chase().with("tail", 0.25).with("fade", 0);
        assertThat(Painting.of(dot, two, 0.5).alpha()).containsExactly(1, 0, 1, 0, 0, 0);
    }

    private static Look chase() {
        return Look.of("chase").seconds("every", 2);
    }

    /**
     * The formula of the reference in doubles, for two members of unlike length, forward and backward. Where a float
     * may round to the other side of a head or of the end of a tail, nothing is said.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.5, 1, false", "7, 0.9, 0.4, true", "40, 1, 0, false", "3, 0.01, 0.7, true", "1000, 0.6, 1, false"
    })
    void isItsFormula(int heads, double tail, double fade, boolean reverse) throws SettingException {
        Canvas two = new Canvases()
                .member("short", Canvases.row(7))
                .member("long", Canvases.row(150))
                .build();
        Look look = chase().with("heads", heads).with("tail", tail).with("fade", fade);
        look = (reverse ? look.flag("reverse") : look).with("phase", 0.3);
        for (double second = 0.1; second < 9; second += 1.37) {
            float[] alpha = Painting.of(look, two, second).alpha();
            double phi = (reverse ? -1 : 1) * (second / 2 + 0.3);
            for (int pixel = 0; pixel < 157; pixel++) {
                double place = pixel < 7 ? (pixel + 0.5) / 7 : (pixel - 7 + 0.5) / 150;
                double gaps = heads * (phi - place);
                double behind = gaps - Math.floor(gaps);
                double level = behind < tail ? 1 - fade * behind / tail : 0;
                if (Math.min(behind, Math.min(1 - behind, Math.abs(behind - tail))) > 2e-4) {
                    assertThat((double) alpha[pixel]).as("pixel %s", pixel).isCloseTo(level, within(1e-3));
                }
            }
        }
    }

    /** Heads that move are whole: of 2 to 5 over 4 s there are 3 (3.49 rounds down) until just before 2 s. */
    @Test
    void hasWholeHeadsWhileTheirNumberMoves() throws SettingException {
        Look still = chase().with("heads", 3).with("phase", 0.25);
        Look moving = chase().moving("heads", 2, 5, 4).with("phase", 0.25);
        assertThat(Painting.of(moving, ROW, 1.98).isSame(Painting.of(still, ROW, 1.98)))
                .isTrue();
        assertThat(Painting.of(moving, ROW, 2).isSame(Painting.of(still.with("heads", 4), ROW, 2)))
                .isTrue();
    }
}
