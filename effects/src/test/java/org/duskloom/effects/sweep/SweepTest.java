package org.duskloom.effects.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.junit.jupiter.api.Test;

class SweepTest {
    private static final Offset<Float> ROUNDING = within(2e-5f);

    /** Nine pixels from the left to the right: s = 0, 1/8, ... 1, exact in binary. */
    private static final Canvas ROW = Canvases.of(Canvases.row(9));

    /** At φ = 0, one band of width 1/2: lit where s < 1/2; the last pixel is just before 1, so not lit. */
    @Test
    void lightsTheBand() throws SettingException {
        assertThat(Painting.of(sweep(), ROW, 0).alpha()).containsExactly(1, 1, 1, 1, 0, 0, 0, 0, 0);
    }

    /** At 0.5 s of 2 s, φ = 1/4: u = frac(s - 1/4) < 1/2 for s in [1/4, 3/4). */
    @Test
    void movesTowardTheRight() throws SettingException {
        assertThat(Painting.of(sweep(), ROW, 0.5).alpha()).containsExactly(0, 0, 1, 1, 1, 1, 0, 0, 0);
    }

    /** Toward 180 degrees, s runs from the right: the mirrored picture. */
    @Test
    void movesTowardTheLeft() throws SettingException {
        assertThat(Painting.of(sweep().with("toward", 180), ROW, 0.5).alpha())
                .containsExactly(0, 0, 0, 1, 1, 1, 1, 0, 0);
    }

    /**
     * With two bands u = frac(2 s): a lit quarter, a dark quarter, and so on. One pass is one band, half the row. The
     * last pixel still belongs to the last quarter.
     */
    @Test
    void hasSeveralBands() throws SettingException {
        assertThat(Painting.of(sweep().with("bands", 2), ROW, 0).alpha()).containsExactly(1, 1, 0, 0, 1, 1, 0, 0, 0);
        assertThat(Painting.of(sweep().with("bands", 2), ROW, 1).alpha()).containsExactly(0, 0, 1, 1, 0, 0, 1, 1, 1);
    }

    /**
     * Width 1, soft 1/4: the edges take u in [0, 1/4] and [3/4, 1]. At u = 1/8, half way up, smoothstep(1/2) = 1/2; at
     * u = 0 it is 0; at u = 7/8 it is 1/2 again.
     */
    @Test
    void softensBothEdgesInsideTheBand() throws SettingException {
        Look soft = sweep().with("width", 1).with("soft", 0.25);
        assertThat(Painting.of(soft, ROW, 0).alpha())
                .usingComparatorWithPrecision(1e-6f)
                .containsExactly(0, 0.5f, 1, 1, 1, 1, 1, 0.5f, 0);
    }

    /**
     * Width 1/2, colours from red to blue in linear light: at s = 1/8, u / width = 1/4, so red 3/4 and blue 1/4.
     */
    @Test
    void laysThePaletteAcrossTheBand() throws SettingException {
        Painting painting = Painting.of(sweep().palette("red", "blue"), ROW, 0);

        assertThat(painting.red()[1]).isCloseTo(0.75f, ROUNDING);
        assertThat(painting.blue()[1]).isCloseTo(0.25f, ROUNDING);
        assertThat(painting.green()[1]).isZero();
        assertThat(painting.red()[6]).isZero();
        assertThat(painting.alpha()[6]).isZero();
    }

    /** Each member has its own range: two rows, one half as long and elsewhere, show the same. */
    @Test
    void spansEachMember() throws SettingException {
        Canvas two = new Canvases()
                .member("left", new double[][] {{-1, 0}, {-0.5, 0}, {0, 0}})
                .member("right", new double[][] {{0.5, 1}, {0.75, 1}, {1, 1}})
                .build();
        assertThat(Painting.of(sweep(), two, 0.5).alpha()).containsExactly(0, 1, 0, 0, 1, 0);
    }

    /** A picture turned by a quarter with {@code toward} turned along is the same, pixel by pixel, to the bit. */
    @Test
    void turnsWithTheStage() throws SettingException {
        double[][] places = Canvases.scattered(300);
        Canvas upright = Canvases.of(places);
        Canvas turned = Canvases.of(Canvases.moved(places, 0, -1, 1, 0));
        Look look = sweep().with("bands", 3).with("soft", 0.3).palette("red", "gold", "navy");
        Painting before = Painting.of(look, upright, 0.7);

        assertThat(Painting.of(look.with("toward", 90), turned, 0.7).isSame(before))
                .isTrue();
    }

    /** At 1 s the direction that moves from 0 to 180 degrees in 2 s is up, where all pixels of the row have s = 0. */
    @Test
    void turnsItsDirectionOverTime() throws SettingException {
        Look look = sweep().moving("toward", 0, 180, 2);

        assertThat(Painting.of(look, ROW, 1).isSame(Painting.of(sweep().with("toward", 90), ROW, 1)))
                .isTrue();
        assertThat(Painting.of(look, ROW, 0).isSame(Painting.of(sweep(), ROW, 0)))
                .isTrue();
    }

    @Test
    void refusesTwoPaces() {
        assertThatThrownBy(() -> sweep().with("passes", 3).on(ROW))
                .isInstanceOfSatisfying(SettingException.class, e -> {
                    assertThat(e.setting()).isEqualTo("passes");
                    assertThat(e).hasMessageContaining("every").hasMessageContaining("passes");
                    assertThat(e.hint()).isNotEmpty();
                });
    }

    private static Look sweep() {
        return Look.of("sweep").seconds("every", 2);
    }
}
