package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.FramePixels;
import org.junit.jupiter.api.Test;

/** What is found of many pixels at once is what is found of each alone. */
class PixelScanTest {
    /** Rows of any length that start anywhere, with pixels that hold, swell, flash and turn red. */
    @Test
    void findsWhatEachPixelAloneGives() {
        SplittableRandom random = new SplittableRandom(31);
        for (int round = 0; round < 60; round++) {
            int pixels = 1 + random.nextInt(PixelScan.MOST + 40);
            int first = random.nextInt(pixels);
            int end = Math.min(pixels, first + 1 + random.nextInt(PixelScan.MOST));
            SignalLayout layout = SignalLayout.of(FramePixels.unnamed(pixels));
            Together together = new Together(layout);
            LuminanceSwings alone = new LuminanceSwings(layout.signalCount());
            RedSwings reds = new RedSwings(layout.signalCount(), together.past);
            byte[] rgb = new byte[5 + 3 * pixels];
            for (int place = 0; place < 60; place++) {
                change(rgb, random);
                together.past.keep(place, rgb, 5);
                long found = together.scan.lookUp(rgb, 5, first, end);
                together.decide(first, end);
                long sum = 0;
                for (int pixel = first; pixel < end; pixel++) {
                    long light = CodeLight.of(rgb, 5 + 3 * pixel);
                    sum += light;
                    boolean turns = alone.step(pixel, CodeLight.luminance(light));
                    assertThat(together.turns(pixel)).isEqualTo(turns);
                    assertThat(together.reddens(pixel, place))
                            .isEqualTo(reds.step(pixel, place, CodeLight.redExcess(light)));
                }
                assertThat(found).isEqualTo(sum);
            }
        }
    }

    /** What moves within bounds once it has changed is not found: else all would be looked at alone in every frame. */
    @Test
    void findsNoMoreThanItHasTo() {
        Together together = new Together(SignalLayout.of(FramePixels.unnamed(100)));
        byte[] rgb = new byte[300];
        for (int place = 0; place < 40; place++) {
            Arrays.fill(rgb, (byte) (place == 0 ? 0 : 90 + 10 * (place % 2)));
            rgb[3 * 41 + 1] = (byte) (255 * (place % 2));
            together.past.keep(place, rgb, 0);
            together.scan.lookUp(rgb, 0, 0, 100);
            together.decide(0, 100);
            assertThat(together.found).hasSize(place < 2 ? 100 : 1);
            for (int pixel : together.found.clone()) {
                together.turns(pixel);
                together.reddens(pixel, place);
            }
            assertThat(together.isFound(41)).isTrue();
        }
    }

    private static void change(byte[] rgb, SplittableRandom random) {
        for (int i = 5; i < rgb.length; i++) {
            int kind = random.nextInt(6);
            rgb[i] = (byte) (kind == 0 ? random.nextInt(256) : kind == 1 ? 255 * random.nextInt(2) : rgb[i] + kind - 3);
        }
    }

    /** Pixels that are looked at together, and alone only where that has found something. */
    private static final class Together {
        private final PastColors past;
        private final LuminanceSwings luminance;
        private final RedSwings reds;
        private final PixelScan scan;
        private int[] found;

        Together(SignalLayout layout) {
            past = new PastColors(layout, 40);
            luminance = new LuminanceSwings(layout.signalCount());
            reds = new RedSwings(layout.signalCount(), past);
            scan = new PixelScan(layout.pixelCount(), luminance, reds);
        }

        /** In two parts, as of a row that is too long to be decided about at once. */
        void decide(int first, int end) {
            int middle = first + (end - first) / 3;
            scan.clear();
            scan.decide(first, middle);
            scan.decide(middle, end);
            found = IntStream.range(0, scan.foundCount()).map(scan::found).toArray();
            assertThat(found).isSorted().doesNotHaveDuplicates();
        }

        boolean turns(int pixel) {
            return isFound(pixel) && luminance.step(pixel, scan.value(pixel));
        }

        int reddens(int pixel, int place) {
            int excess = scan.redExcess(pixel);
            boolean looked = isFound(pixel) && reds.mayChange(pixel, scan.value(pixel), excess);
            return looked ? reds.step(pixel, place, excess) : 0;
        }

        private boolean isFound(int pixel) {
            return Arrays.binarySearch(found, pixel) >= 0;
        }
    }
}
