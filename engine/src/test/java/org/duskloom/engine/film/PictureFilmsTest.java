package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.png.AnimationFrames;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.Raster;
import org.duskloom.engine.preview.SceneDrawing;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Animated pictures and videos, read back by others. */
class PictureFilmsTest {
    private static final FilmSize SIZE = new FilmSize(160, 100);

    @TempDir
    private Path folder;

    private final FrameSource show = Films.show(FrameRate.of(40), 50);

    /** Played by rules of the specification over the JDK's reader: {@link AnimationFrames}. */
    @Test
    void anAnimationShowsTheDrawnFrames() throws Exception {
        List<AnimationFrames.Shown> shown =
                AnimationFrames.of(Files.readAllBytes(film(new AnimationKind(Optional.of(SIZE), 0), span(3, 43))));
        assertThat(shown).hasSize(40);
        for (int i = 0; i < shown.size(); i++) {
            assertThat(shown.get(i).dots()).as("frame %d", i).isEqualTo(dots(drawn(3 + i)));
            assertThat(shown.get(i).delayNumerator()).isEqualTo(1);
            assertThat(shown.get(i).delayDenominator()).isEqualTo(40);
        }
    }

    /** 13 pixels: 120 + 40 √13 dots along the longer side. */
    @Test
    void fewPixelsHaveASmallPicture() {
        FilmSize size = new AnimationKind(Optional.empty(), 0).size(show.info());
        assertThat(Math.max(size.width(), size.height())).isEqualTo(264);
    }

    @Test
    void everyThirdFrameLastsThreeTimesAsLong() throws Exception {
        FrameList some = FrameList.of(3, 6, 9, 12);
        List<AnimationFrames.Shown> shown =
                AnimationFrames.of(Files.readAllBytes(film(new AnimationKind(Optional.of(SIZE), 0), some)));
        assertThat(shown).hasSize(4);
        assertThat(shown.get(3).dots()).isEqualTo(dots(drawn(12)));
        assertThat(shown).allMatch(frame -> frame.delayNumerator() == 3 && frame.delayDenominator() == 40);
        assertThat(head(film(new VideoKind(Optional.of(SIZE)), some))).contains(" F40:3 ");
    }

    /** The line of yuv4mpeg(5), and the length that it says. */
    @Test
    void aVideoSaysItsSizeAndRate() throws Exception {
        FrameSource broadcast = Films.show(new FrameRate(30000, 1001), 5);
        VideoKind kind = new VideoKind(Optional.of(SIZE));
        Path file = Films.made(kind, broadcast, span(0, 5), folder);
        assertThat(head(file)).isEqualTo("YUV4MPEG2 W160 H100 F30000:1001 Ip A1:1 C444");
        assertThat(Files.size(file)).isEqualTo(head(file).length() + 1 + 5 * (6 + 3 * 160 * 100));
        assertThat(kind.bytes(broadcast.info())).isEqualTo(5 * (6 + 3 * 160 * 100));
    }

    /** ffmpeg, told nothing of size, rate or colour, gives back what was drawn, to two codes. */
    @Test
    void ffmpegTakesTheVideoAsItWasDrawn() throws Exception {
        byte[] rgb = decoded(film(new VideoKind(Optional.of(SIZE)), span(0, 10)));
        assertThat(rgb).hasSize(10 * 3 * SIZE.dots());
        for (int frame = 0; frame < 10; frame++) {
            byte[] drawn = drawn(frame);
            for (int i = 0; i < drawn.length; i++) {
                int seen = rgb[frame * drawn.length + i] & 0xFF;
                assertThat(Math.abs(seen - (drawn[i] & 0xFF))).isLessThanOrEqualTo(2);
            }
        }
    }

    /** An independent reader of animated PNG. */
    @Test
    void ffmpegPlaysTheAnimation() throws Exception {
        byte[] rgb = decoded(film(new AnimationKind(Optional.of(SIZE), 1), span(0, 10)));
        assertThat(rgb).hasSize(10 * 3 * SIZE.dots());
        for (int frame = 0; frame < 10; frame++) {
            int from = frame * 3 * SIZE.dots();
            assertThat(Arrays.copyOfRange(rgb, from, from + 3 * SIZE.dots())).isEqualTo(drawn(frame));
        }
    }

    @Test
    void pngcheckFindsNothingWrong() throws Exception {
        Path file = film(new AnimationKind(Optional.of(SIZE), 1), span(0, 10));
        assertThat(new String(ran("pngcheck", "-q", file.toString()), StandardCharsets.UTF_8))
                .isBlank();
    }

    private Path film(StreamKind kind, FrameList frames) throws Exception {
        return Films.made(kind, show, frames, folder);
    }

    private static FrameList span(long from, long to) {
        return FrameList.of(new FrameSpan(from, to));
    }

    private byte[] drawn(long frame) {
        PreviewScene scene = PreviewScene.of(show.info());
        Raster picture = new Raster(SIZE.width(), SIZE.height(), 0xFFFFFF);
        new SceneDrawing(scene, SIZE.width(), SIZE.height(), OptionalInt.empty()).draw(Films.frame(frame), 0, picture);
        byte[] rgb = new byte[3 * SIZE.dots()];
        picture.copyTo(rgb, 0);
        return rgb;
    }

    private static int[] dots(byte[] rgb) {
        int[] dots = new int[rgb.length / 3];
        for (int i = 0; i < dots.length; i++) {
            dots[i] = (rgb[3 * i] & 0xFF) << 16 | (rgb[3 * i + 1] & 0xFF) << 8 | rgb[3 * i + 2] & 0xFF;
        }
        return dots;
    }

    private static String head(Path file) throws IOException {
        String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        return text.substring(0, text.indexOf('\n'));
    }

    private byte[] decoded(Path film) throws Exception {
        return ran(
                "ffmpeg",
                "-v",
                "error",
                "-i",
                film.toString(),
                "-vsync",
                "0",
                "-f",
                "rawvideo",
                "-pix_fmt",
                "rgb24",
                "-sws_flags",
                "accurate_rnd+full_chroma_int",
                "-");
    }

    /** Skips the test, and says so, where there is no such program. */
    private byte[] ran(String... command) throws Exception {
        Path out = folder.resolve("out");
        Process process;
        try {
            process = new ProcessBuilder(command)
                    .redirectOutput(out.toFile())
                    .redirectError(folder.resolve("err").toFile())
                    .start();
        } catch (IOException missing) {
            assumeThat(false).as("%s is not installed", command[0]).isTrue();
            return new byte[0];
        }
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        return Files.readAllBytes(out);
    }
}
