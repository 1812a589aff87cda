package org.duskloom.effects.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.duskloom.effects.Canvases;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.random.GradientNoise;
import org.duskloom.engine.random.StableHash;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where pixels of two members lie in the noise, against the noise in space itself. */
class OctaveSpaceTest {
    private static final int EACH = 40;
    private static final Canvas CANVAS = new Canvases()
            .member("bed", Canvases.scattered(EACH))
            .member("pond", Canvases.scattered(EACH))
            .build();
    private static final NoisePlaces PLACES = NoisePlaces.of(CANVAS, Settings.of(Map.of()));

    @Test
    void eachOctaveIsTwiceAsFine() {
        for (int number = 0; number < 5; number++) {
            assertThat(space(number).fineness()).isEqualTo(Math.pow(2, number));
        }
        assertThat(space(0).pixelCount()).isEqualTo(2 * EACH);
    }

    /** On a plane of whole z the noise is what the plane gives; the pixel lies between two of them. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3})
    void planesGiveTheNoiseThatIsThere(int number) {
        OctaveSpace space = space(number);
        float[] values = new float[2 * EACH];
        float[] slopes = new float[2 * EACH];
        for (int pixel = 0; pixel < 2 * EACH; pixel++) {
            long key = StableHash.combine(CANVAS.memberKey(pixel / EACH), number);
            double x = place(PLACES.x(pixel), key, number, 0);
            double y = place(PLACES.y(pixel), key, number, 1);
            double z = place(PLACES.z(pixel), key, number, 2);
            for (int planes : new int[] {-2, 0, 1, 77}) {
                space.fill(pixel, planes, values, slopes);
                double expected = new GradientNoise(key).at(x, y, Math.floor(z) + planes);
                assertThat((double) values[pixel]).isCloseTo(expected, within(1e-6));
            }
            assertThat((double) space.start(pixel))
                    .isCloseTo(z - Math.floor(z), within(1e-6))
                    .isLessThan(1);
        }
    }

    /** Two props of one shape at one place do not move in step. */
    @Test
    void membersHaveNoiseOfTheirOwn() {
        OctaveSpace space = space(0);
        float[] values = new float[2 * EACH];
        int same = 0;
        for (int pixel = 0; pixel < EACH; pixel++) {
            space.fill(pixel, 0, values, new float[2 * EACH]);
            space.fill(pixel + EACH, 0, values, new float[2 * EACH]);
            same += Math.abs(values[pixel] - values[pixel + EACH]) < 1e-3 ? 1 : 0;
        }
        assertThat(same).isLessThan(EACH / 10);
        assertThat(space.offset(0, 0)).isNotEqualTo(space.offset(1, 0));
    }

    /** The noise has a period of 256 along each axis (K. Perlin, "Improving Noise", 2002). */
    @Test
    void repeatsAfter256Planes() {
        float[] values = new float[2 * EACH];
        float[] later = new float[2 * EACH];
        for (int pixel = 0; pixel < EACH; pixel++) {
            space(1).fill(pixel, 5, values, new float[2 * EACH]);
            space(1).fill(pixel, 5 + 256, later, new float[2 * EACH]);
        }
        assertThat(later).containsExactly(values);
    }

    private static double place(double coarse, long key, int number, int axis) {
        return coarse * (1 << number) + StableHash.unitDouble(StableHash.combine(key, axis));
    }

    private static OctaveSpace space(int number) {
        return new OctaveSpace(CANVAS, PLACES, number);
    }
}
