package org.duskloom.effects.morph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.duskloom.effects.assign.Clouds;
import org.duskloom.effects.assign.Points;
import org.duskloom.engine.effect.Patch;
import org.junit.jupiter.api.Test;

/** Light of one colour against that of several, which happen to be one. */
class LevelLightTest {
    private static final int PIXELS = 40;
    private static final Points PLACES = Clouds.line(PIXELS, 1);
    private static final PixelGrid ODD = grid(1);
    private static final PixelGrid EVEN = grid(0);

    private final SplittableRandom random = new SplittableRandom(5);

    private static PixelGrid grid(int first) {
        int[] numbers =
                IntStream.range(0, PIXELS - 4).filter(i -> i % 2 == first).toArray();
        return new PixelGrid(PLACES, numbers, 0.5, true);
    }

    @Test
    void isThatOfOneColourOfMany() {
        List<PixelGrid> grids = List.of(ODD, EVEN);
        Light one = Light.of(PIXELS, grids, 1);
        Light many = Light.of(PIXELS, grids, 2);
        assertThat(one).isInstanceOf(LevelLight.class);
        for (int round = 0; round < 300; round++) {
            float[] color = {random.nextFloat(), random.nextFloat(), random.nextFloat(), random.nextFloat()};
            one.begin(color);
            many.begin(color);
            for (int block = 0; block < 3; block++) {
                light(random.nextInt(2), random.nextInt(60), color, one, many);
            }
            assertThat(shown(one)).isEqualTo(shown(many));
        }
    }

    /** Lights the same in both; distances up to the reach, whose square is 4. */
    private void light(int grid, int count, float[] color, Light... lights) {
        int[] places = IntStream.range(0, count).map(i -> random.nextInt(15)).toArray();
        double[] squares = IntStream.range(0, count)
                .mapToDouble(i -> 4 * random.nextDouble())
                .toArray();
        for (Light light : lights) {
            light.turnTo(grid);
            DotFrame frame = new DotFrame(1, true);
            DotWays.of(0).give(color, frame);
            frame.found.begin(2, 0);
            for (int i = 0; i < count; i++) {
                frame.found.words[i] = Found.word(places[i], 0);
                frame.found.squares[i] = squares[i];
            }
            frame.found.count = count;
            light.add(frame.found, frame, 4);
        }
    }

    private static float[][] shown(Light light) {
        Patch patch = new Patch();
        patch.reset(7, 7 + PIXELS);
        light.paint(0, patch);
        return new float[][] {patch.red.clone(), patch.green.clone(), patch.blue.clone(), patch.alpha.clone()};
    }
}
