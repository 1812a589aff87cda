package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.PropSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThinnedStripTest {
    @TempDir
    private Path folder;

    /** Up to 65,535 rows all are shown; of more no more than 16,384: 65,536 / 4, 65,537 / 5, 100,000 / 7. */
    @ParameterizedTest
    @CsvSource({
        "1, false, 1",
        "65535, false, 1",
        "65536, false, 4",
        "65537, false, 5",
        "100000, false, 7",
        "347117, true, 1",
        "347118, true, 22"
    })
    void tallPicturesAreThinned(int pixels, boolean exact, int distance) {
        PreviewScene scene = scene("", pixels, List.of());
        assertThat(ThinnedStrip.distance(scene, exact)).isEqualTo(distance);
        assertThat(ThinnedStrip.thinned(scene, distance).pixelCount())
                .isEqualTo((pixels - 1) / distance + 1)
                .isLessThanOrEqualTo(exact ? pixels : 65_535);
    }

    /** Ten pixels, every third: 0, 3, 6 and 9. The gate has 4 and 5, none of which is shown. */
    @Test
    void propsKeepThePixelsThatAreShown() {
        List<PropSpan> props =
                List.of(new PropSpan("fence", 0, 4), new PropSpan("gate", 4, 2), new PropSpan("pond", 6, 4));
        PreviewScene thinned = ThinnedStrip.thinned(scene("Dusk", 10, props), 3);
        assertThat(thinned.props()).containsExactly(new PropSpan("fence", 0, 2), new PropSpan("pond", 2, 2));
        assertThat(thinned.x()).containsExactly(0, 3, 6, 9);
        assertThat(thinned.y()).containsExactly(0, -3, -6, -9);
        assertThat(thinned.title()).isEqualTo("Dusk, one pixel in 3");
        assertThat(ThinnedStrip.thinned(scene("", 10, props), 2).title()).isEqualTo("one pixel in 2");
    }

    /** However props and distances fall: those shown follow each other, and every pixel shown is in its own prop. */
    @Test
    void everyPixelStaysInItsProp() {
        SplittableRandom random = new SplittableRandom(24);
        for (int round = 0; round < 300; round++) {
            List<PropSpan> props = new ArrayList<>();
            int pixels = 0;
            for (int i = 0; i < 1 + random.nextInt(12); i++) {
                int count = 1 + random.nextInt(20);
                props.add(new PropSpan("p" + i, pixels, count));
                pixels += count;
            }
            int distance = 1 + random.nextInt(25);
            int next = 0;
            for (PropSpan shown :
                    ThinnedStrip.thinned(scene("", pixels, props), distance).props()) {
                PropSpan whole = props.get(Integer.parseInt(shown.name().substring(1)));
                assertThat(shown.firstPixel()).isEqualTo(next);
                next += shown.pixelCount();
                assertThat(shown.firstPixel() * distance).isGreaterThanOrEqualTo(whole.firstPixel());
                assertThat((next - 1) * distance).isLessThan(whole.firstPixel() + whole.pixelCount());
            }
            assertThat(next).isEqualTo((pixels - 1) / distance + 1);
        }
    }

    /** Frames that come together, of seven pixels: the same picture as that of pixels 0, 3 and 6 alone. */
    @Test
    void drawsThePixelsThatAreShown() throws IOException {
        PreviewScene thinned = ThinnedStrip.thinned(scene("", 7, List.of()), 3);
        Path some = folder.resolve("some.png");
        Path all = folder.resolve("all.png");
        try (FrameSink strip = new ThinnedStrip(strip(all, thinned), 3, 7)) {
            strip.take(FrameBatch.of(FrameList.of(0, 1, 2), 21, (frame, rgb, offset) -> {
                for (int i = 0; i < 21; i++) {
                    rgb[offset + i] = (byte) (100 * frame + i);
                }
            }));
            strip.finish();
        }
        try (FrameSink strip = strip(some, thinned)) {
            for (int frame = 0; frame < 3; frame++) {
                byte[] rgb = new byte[9];
                for (int i = 0; i < 9; i++) {
                    rgb[i] = (byte) (100 * frame + 9 * (i / 3) + i % 3);
                }
                strip.frame(frame, rgb);
            }
            strip.finish();
        }
        assertThat(Files.readAllBytes(all)).isEqualTo(Files.readAllBytes(some));
    }

    @Test
    void leavesNothingUnlessItIsFinished() throws IOException {
        FrameSink strip = new ThinnedStrip(strip(folder.resolve("a.png"), scene("", 1, List.of())), 2, 2);
        strip.frame(0, new byte[6]);
        strip.close();
        assertThat(folder).isEmptyDirectory();
    }

    private static TimeStrip strip(Path target, PreviewScene scene) throws IOException {
        return new TimeStrip(StagedFile.open(target, IfExists.REFUSE), scene, 0, 3, OptionalInt.of(4));
    }

    /** Pixel n hangs at n to the right and n down. */
    private static PreviewScene scene(String title, int pixels, List<PropSpan> props) {
        double[] x = IntStream.range(0, pixels).asDoubleStream().toArray();
        double[] y = IntStream.range(0, pixels).mapToDouble(i -> 0.0 - i).toArray();
        return new PreviewScene(title, x, y, props, frame -> frame / 40.0);
    }
}
