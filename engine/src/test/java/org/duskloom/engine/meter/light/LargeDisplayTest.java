package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Pixels are decided about many at a time, in runs that end where nothing changes: each counts as if it were alone. By
 * comparison of a large display with its props one by one.
 */
class LargeDisplayTest {
    private static final int RATE = 10;
    private static final int[] PIXELS = {1, 2047, 129, 3, 700, 2500, 64};

    @Test
    void countsEachPropAsIfItWereAlone() throws IOException {
        Random random = new Random(3);
        List<int[]> frames = frames(random);
        FlashFigures all = Flickers.play(LightMeter.ofAnyArea(), RATE, Flickers.props(PIXELS), frames);
        int first = 0;
        for (int prop = 0; prop < PIXELS.length; prop++) {
            FlashFigures alone = Flickers.play(
                    LightMeter.ofAnyArea(), RATE, Flickers.props(PIXELS[prop]), part(frames, first, PIXELS[prop]));
            FlashFigures.PropFlashes found = all.props().get(prop);
            FlashFigures.PropFlashes wanted = alone.props().get(0);
            assertThat(found.general().most()).isEqualTo(wanted.general().most());
            assertThat(found.general().firstFrame()).isEqualTo(wanted.general().firstFrame());
            assertThat(found.general().pixelsOver()).isEqualTo(wanted.general().pixelsOver());
            assertThat(found.red().most()).isEqualTo(wanted.red().most());
            assertThat(found.red().firstFrame()).isEqualTo(wanted.red().firstFrame());
            assertThat(found.red().pixelsOver()).isEqualTo(wanted.red().pixelsOver());
            first += PIXELS[prop];
        }
    }

    /** Each prop stands still in one frame of five; in the others about half of its pixels flicker. */
    private static List<int[]> frames(Random random) {
        int count = 0;
        for (int pixels : PIXELS) {
            count += pixels;
        }
        int[] choices = {0, 0xFF0000, 0xFF8800, 0xFFFFFF, 0x404040};
        List<int[]> frames = new ArrayList<>();
        int[] colors = new int[count];
        for (int frame = 0; frame < 60; frame++) {
            int first = 0;
            for (int pixels : PIXELS) {
                boolean isStill = random.nextInt(5) == 0;
                for (int i = random.nextInt(pixels) / 8; i < pixels && !isStill; i += 1 + random.nextInt(2)) {
                    colors[first + i] = choices[random.nextInt(choices.length)];
                }
                first += pixels;
            }
            frames.add(colors.clone());
        }
        return frames;
    }

    private static List<int[]> part(List<int[]> frames, int first, int count) {
        return frames.stream()
                .map(colors -> Arrays.copyOfRange(colors, first, first + count))
                .toList();
    }
}
