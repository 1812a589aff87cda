package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The meter finds in shows of chance what the plainest way of counting finds, of every prop and of the whole. */
class PlainFlashesTest {
    private static final int RATE = 20;
    private static final int[] PIXELS = {1, 1, 3, 150};

    /** Colours that come often in shows, and those at the edges of the rules. */
    private static final int[] USUAL = {
        0, 0, 0xFFFFFF, 0xFF0000, 0xC80000, 0x460000, 0xFF4500, 0xFF6347, 0xFF8800, 0xFF8900, 0xFFA500, 0xDC143C,
        0x0000FF, 0x00FF00, 0xFFFF00, 0xFF00FF, 0x808080, 0x5A5A5A, 0xE7E7E7, 0xF4F4F4, 0x0C0000, 0x0D0000
    };

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void agreesWithTheMeter(long seed) throws IOException {
        Random random = new Random(seed);
        List<int[]> frames = new ArrayList<>();
        int[] colors = new int[155];
        for (int frame = 0; frame < 120; frame++) {
            for (int pixel = 0; pixel < colors.length; pixel++) {
                colors[pixel] = next(colors[pixel], seed, random);
            }
            frames.add(colors.clone());
        }
        assertAgrees(seed % 2 == 0, frames);
    }

    /** Fades that take up to two seconds, to and from reds and what lies as far from them as counts, and near it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesOfFades(long seed) throws IOException {
        Random random = new Random(seed);
        int[] reds = {0xFF0000, 0xC80000, 0xFF4500, 0xFF6347, 0xFF8800, 0xFF8900, 0xFFA500, 0xDC143C, 0xFFFFFF, 0x0D0000
        };
        List<int[]> frames = new ArrayList<>();
        int[] colors = new int[155];
        int[] from = new int[155];
        int[] to = new int[155];
        int[] length = new int[155];
        int[] gone = new int[155];
        for (int frame = 0; frame < 240; frame++) {
            for (int pixel = 0; pixel < colors.length; pixel++) {
                if (gone[pixel] == length[pixel]) {
                    from[pixel] = to[pixel];
                    to[pixel] = reds[random.nextInt(reds.length)];
                    length[pixel] = 1 + random.nextInt(2 * RATE);
                    gone[pixel] = 0;
                }
                gone[pixel]++;
                colors[pixel] = faded(from[pixel], to[pixel], gone[pixel], length[pixel]);
            }
            frames.add(colors.clone());
        }
        assertAgrees(seed % 2 == 0, frames);
    }

    private static int faded(int from, int to, int gone, int length) {
        int color = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            int start = from >> shift & 0xFF;
            int end = to >> shift & 0xFF;
            color |= (start + (end - start) * gone / length) << shift;
        }
        return color;
    }

    private static void assertAgrees(boolean once, List<int[]> frames) throws IOException {
        List<int[]> played = once ? frames : withJoint(frames);
        FlashFigures found = Flickers.play(LightMeter.ofAnyArea(), RATE, Flickers.props(PIXELS), frames);

        int first = 0;
        for (int prop = 0; prop < PIXELS.length; prop++) {
            int[] worst = worst(played, first, PIXELS[prop]);
            FlashFigures.PropFlashes told = found.props().get(prop);
            assertThat(once ? told.general().mostOnce() : told.general().most()).isEqualTo(worst[0]);
            assertThat(once ? told.red().mostOnce() : told.red().most()).isEqualTo(worst[1]);
            first += PIXELS[prop];
        }
    }

    /** What a pixel shows next: the same, another colour, or one a little beside it, as the seed has it. */
    private static int next(int color, long seed, Random random) {
        double chance = random.nextDouble();
        if (chance < 0.15 * (seed % 5 + 1)) {
            return USUAL[random.nextInt(USUAL.length)];
        }
        if (chance > 0.9) {
            return random.nextInt(1 << 24);
        }
        int step = random.nextInt(31) - 15;
        return chance > 0.7
                ? moved(color, step) << 16 | moved(color >> 8, -step) << 8 | moved(color >> 16, step)
                : color;
    }

    private static int moved(int color, int step) {
        return Math.max(0, Math.min(255, (color & 0xFF) + step));
    }

    private static List<int[]> withJoint(List<int[]> frames) {
        List<int[]> looped = new ArrayList<>(frames);
        looped.addAll(frames);
        return looped;
    }

    /** Of all pixels of a prop and of their mean: the most changes of luminance, and of red by either rule. */
    private static int[] worst(List<int[]> frames, int first, int count) {
        int[] worst = new int[2];
        for (int pixel = first; pixel <= first + count; pixel++) {
            List<double[]> colors = new ArrayList<>();
            for (int[] frame : frames) {
                colors.add(pixel < first + count ? PlainFlashes.linear(frame[pixel]) : mean(frame, first, count));
            }
            worst[0] = Math.max(worst[0], PlainFlashes.worst(PlainFlashes.general(colors), RATE));
            worst[1] = Math.max(worst[1], PlainFlashes.worst(PlainFlashes.olderRed(colors), RATE));
            worst[1] = Math.max(worst[1], PlainFlashes.worst(PlainFlashes.chromaticRed(colors, RATE), RATE));
        }
        return worst;
    }

    private static double[] mean(int[] frame, int first, int count) {
        double[] mean = new double[3];
        for (int pixel = first; pixel < first + count; pixel++) {
            double[] color = PlainFlashes.linear(frame[pixel]);
            for (int i = 0; i < 3; i++) {
                mean[i] += color[i] / count;
            }
        }
        return mean;
    }
}
