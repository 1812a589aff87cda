package org.duskloom.effects.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Offset;
import org.duskloom.effects.Canvases;
import org.duskloom.effects.Look;
import org.duskloom.effects.Painting;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.random.GradientNoise;
import org.duskloom.engine.random.StableHash;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DriftTest {
    private static final Offset<Float> ROUNDING = within(3e-5f);
    private static final Canvas MANY = Canvases.of(Canvases.scattered(200));

    /** Black to white in linear light, so that what is painted is the place in the palette; one cell a second. */
    private static Look drift() {
        return Look.of("drift").seconds("every", 1).with("contrast", 0.5).palette("black", "white");
    }

    /**
     * The sum of octaves as its formula says, from the noise of {@link GradientNoise}, which is checked against the
     * values that K. Perlin's reference implementation gives (SIGGRAPH 2002).
     */
    private static double noise(int pixel, double phi, double scale, double wind, double degrees, int octaves) {
        double cosine = StrictMath.cos(StrictMath.toRadians(degrees));
        double sine = StrictMath.sin(StrictMath.toRadians(degrees));
        double x = MANY.x()[pixel] * scale / 2;
        double y = MANY.y()[pixel] * scale / 2;
        double along = x * cosine + y * sine;
        double across = y * cosine - x * sine;
        double sum = 0;
        double weight = 0;
        for (int o = 0; o < octaves; o++) {
            long key = StableHash.combine(MANY.memberKey(0), o);
            double fine = StrictMath.pow(2, o);
            double strong = StrictMath.pow(0.5, o);
            sum += strong
                    * new GradientNoise(key)
                            .at(
                                    fine * along * Math.sqrt(1 - wind * wind) + offset(key, 0),
                                    fine * across + offset(key, 1),
                                    fine * (phi - along * wind) + offset(key, 2));
            weight += strong;
        }
        return sum / weight;
    }

    private static double offset(long key, int axis) {
        return StableHash.unitDouble(StableHash.combine(key, axis));
    }

    @ParameterizedTest
    @CsvSource({
        "3, 0, 0, 1, 0",
        "3, 0, 0, 1, 0.3",
        "3, 0, 40, 3, 17.9",
        "8, 0.6, 0, 2, 1.1",
        "8, 0.6, 210, 2, 1234.5",
        "5, 1, 90, 1, 2.2",
        "0.01, 0.3, 5, 6, 100.01",
        "100, 0.3, 5, 6, 3"
    })
    void paintsTheNoise(double scale, double wind, double degrees, int octaves, double second) throws SettingException {
        Look look = drift().with("scale", scale)
                .with("wind", wind)
                .with("toward", degrees)
                .with("octaves", octaves);
        float[] red = Painting.of(look, MANY, second).red();
        for (int i = 0; i < red.length; i++) {
            double expected = 0.5 + 0.5 * noise(i, second, scale, wind, degrees, octaves);
            assertThat(red[i]).isCloseTo((float) expected, ROUNDING);
        }
    }

    /**
     * Under wind alone the clouds slide: with scale 4 a pixel distance of 1/20 canvas unit is a tenth of a cell, so
     * after a tenth of a pass every pixel shows what the pixel on its left showed.
     */
    @Test
    void slidesUnderWind() throws SettingException {
        Canvas row = Canvases.of(Canvases.row(41));
        Look look = drift().with("scale", 4).with("wind", 1).with("octaves", 3);
        float[] before = Painting.of(look, row, 2).red();
        float[] after = Painting.of(look, row, 2.1).red();

        assertThat(Arrays.copyOfRange(after, 1, 41)).containsExactly(Arrays.copyOfRange(before, 0, 40), within(1e-5f));
        assertThat(after[20]).isNotCloseTo(before[20], within(1e-4f));
    }

    /** The noise has a period of 256 cells, and each octave runs over whole numbers of cells in that time. */
    @Test
    void repeatsAfter256Passes() throws SettingException {
        Look look = drift().with("octaves", 4);
        assertThat(Painting.of(look, MANY, 256.25).isSame(Painting.of(look, MANY, 0.25)))
                .isTrue();
    }

    /** Backward, φ is negated; 256 passes on, it is positive again. */
    @Test
    void runsBackward() throws SettingException {
        assertThat(Painting.of(drift().flag("reverse"), MANY, 250.75).isSame(Painting.of(drift(), MANY, 5.25)))
                .isTrue();
    }

    @Test
    void isTheMiddleOfThePaletteWithoutContrast() throws SettingException {
        assertThat(Painting.of(drift().with("contrast", 0), MANY, 3.3).red())
                .containsOnly(new float[] {0.5f}, ROUNDING);
    }

    /** Without roughness only the first octave counts. */
    @Test
    void isSmoothWithoutRoughness() throws SettingException {
        Painting one = Painting.of(drift().with("octaves", 1), MANY, 3.3);
        Painting many = Painting.of(drift().with("octaves", 5).with("roughness", 0), MANY, 3.3);
        assertThat(many.red()).containsExactly(one.red(), within(1e-6f));
    }

    /**
     * Strong contrast is clipped to the ends of the palette: nearly all pixels are black or white, about as many of
     * each.
     */
    @Test
    void clipsStrongContrast() throws SettingException {
        Canvas canvas = Canvases.of(Canvases.scattered(5000));
        float[] red = Painting.of(drift().with("contrast", 20).with("scale", 60), canvas, 0.3)
                .red();
        int black = 0;
        int white = 0;
        for (float value : red) {
            black += value == 0 ? 1 : 0;
            white += value == 1 ? 1 : 0;
        }
        assertThat(black + white).isGreaterThan(4000);
        assertThat(black).isBetween(1800, 3200);
    }

    /** A picture turned by a quarter with {@code toward} turned along is the same, pixel by pixel, to the bit. */
    @Test
    void turnsWithTheStage() throws SettingException {
        double[][] places = Canvases.scattered(300);
        Canvas turned = Canvases.of(Canvases.moved(places, 0, -1, 1, 0));
        Look look = Look.of("drift").with("wind", 0.7);
        Painting before = Painting.of(look, Canvases.of(places), 0.7);

        assertThat(Painting.of(look.with("toward", 90), turned, 0.7).isSame(before))
                .isTrue();
    }

    /** At 1 s the moving numbers have the values of the still ones. */
    @Test
    void movesItsPlane() throws SettingException {
        Look moving = drift().moving("scale", 2, 4, 2)
                .moving("wind", 0, 1, 2)
                .moving("octaves", 1, 3, 2)
                .moving("contrast", 0, 1, 2);
        Look still =
                drift().with("scale", 3).with("wind", 0.5).with("octaves", 2).with("contrast", 0.5);

        assertThat(Painting.of(moving, MANY, 1).isSame(Painting.of(still, MANY, 1)))
                .isTrue();
    }

    /** Another prop, before or after it, changes nothing on this one; two props alike have other clouds. */
    @Test
    void staysTheSameBesideOtherProps() throws SettingException {
        Canvas alone = new Canvases().member("daisy", Canvases.scattered(300)).build();
        Canvas together = new Canvases()
                .member("fence", Canvases.scattered(77))
                .member("daisy", Canvases.scattered(300))
                .member("pond", Canvases.scattered(300))
                .build();
        for (double second : new double[] {0, 1.3, 55.5}) {
            float[] red = Painting.of(drift(), together, second).red();
            float[] only = Painting.of(drift(), alone, second).red();
            assertThat(Arrays.copyOfRange(red, 77, 377)).containsExactly(only);
            assertThat(Arrays.copyOfRange(red, 377, 677)).isNotEqualTo(only);
        }
    }
}
