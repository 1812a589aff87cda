package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
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
                together.scan.decide(first, end);
                together.scan.note(first, end);
                long sum = 0;
                for (int pixel = first; pixel < end; pixel++) {
                    long light = CodeLight.of(rgb, 5 + 3 * pixel);
                    sum += light;
                    boolean turns = alone.step(pixel, CodeLight.luminance(light));
                    assertThat(together.turns(first, pixel)).isEqualTo(turns);
                    assertThat(together.reddens(first, pixel, place))
                            .isEqualTo(reds.step(pixel, place, CodeLight.redExcess(light)));
                }
                assertThat(found).isEqualTo(sum);
            }
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

        Together(SignalLayout layout) {
            past = new PastColors(layout, 40);
            luminance = new LuminanceSwings(layout.signalCount());
            reds = new RedSwings(layout.signalCount(), past);
            scan = new PixelScan(layout.pixelCount(), luminance, reds);
        }

        boolean turns(int first, int pixel) {
            boolean found = isSet(scan.turned((pixel - first) / Long.SIZE), pixel - first);
            return found && luminance.step(pixel, scan.value(pixel));
        }

        int reddens(int first, int pixel, int place) {
            boolean found = isSet(scan.reddened((pixel - first) / Long.SIZE), pixel - first);
            return found ? reds.step(pixel, place, scan.redExcess(pixel)) : 0;
        }

        private static boolean isSet(long bits, int bit) {
            return (bits >>> bit & 1) != 0;
        }
    }
}
