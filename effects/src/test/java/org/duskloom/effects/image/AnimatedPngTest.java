package org.duskloom.effects.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.duskloom.effects.PngBuilder;
import org.duskloom.effects.PngBuilder.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Animated PNG, and what is refused of it. */
class AnimatedPngTest {
    /** Frames 0 to 2 of a row of three: red everywhere; green in the middle; red again on the left, then nothing. */
    @ParameterizedTest
    @CsvSource({
        // What the second frame leaves behind: itself, transparency in its place, or what was there before it.
        "0, FFFF0000 FF00FF00 FFFF0000, FF0000FF FF00FF00 FFFF0000",
        "1, FFFF0000 FF00FF00 FFFF0000, FF0000FF 00000000 FFFF0000",
        "2, FFFF0000 FF00FF00 FFFF0000, FF0000FF FFFF0000 FFFF0000"
    })
    void leavesBehindWhatItShould(int dispose, String second, String third) throws ImageException {
        Film film = PngFile.read(PngBuilder.animation(
                3,
                1,
                Frame.whole(3, 1, 1, 10, PngFileTest.RED, PngFileTest.RED, PngFileTest.RED),
                new Frame(1, 0, 1, 1, 1, 10, dispose, 0, PngFileTest.GREEN),
                new Frame(0, 0, 1, 1, 1, 10, 0, 0, 0xFF0000FF)));

        assertThat(hex(film, 1)).isEqualTo(second);
        assertThat(hex(film, 2)).isEqualTo(third);
    }

    /**
     * Blue of alpha 128 over opaque red: (128 · 255 + 127 · 0) / 255 = 128 of blue, 127 of red. Over transparency it
     * stays as it is. As the source, it replaces what was there.
     */
    @Test
    void blends() throws ImageException {
        int blue = 0x800000FF;
        Film film = PngFile.read(PngBuilder.animation(
                2,
                1,
                Frame.whole(2, 1, 1, 10, PngFileTest.RED, PngFileTest.CLEAR),
                new Frame(0, 0, 2, 1, 1, 10, 2, 1, blue, blue),
                new Frame(0, 0, 2, 1, 1, 10, 0, 0, blue, PngFileTest.CLEAR)));

        assertThat(hex(film, 1)).isEqualTo("FF7F0080 800000FF");
        assertThat(hex(film, 2)).isEqualTo("800000FF 00000000");
    }

    /**
     * Half-transparent green over half-transparent red: alpha 1/2 + 1/2 · 1/2 = 3/4, green 2/3 of the colour, red 1/3.
     */
    @Test
    void blendsTranslucentOnes() throws ImageException {
        Film film = PngFile.read(PngBuilder.animation(
                1, 1, Frame.whole(1, 1, 1, 10, 0x80FF0000), new Frame(0, 0, 1, 1, 1, 10, 0, 1, 0x8000FF00)));

        assertThat(hex(film, 1)).isEqualTo("C055AA00");
    }

    /** 1001/30000 s; a denominator of 0 stands for 100; no time at all becomes a tenth of a second. */
    @Test
    void readsDelays() throws ImageException {
        Film film = PngFile.read(PngBuilder.animation(
                1,
                1,
                Frame.whole(1, 1, 1001, 30000, PngFileTest.RED),
                Frame.whole(1, 1, 7, 0, PngFileTest.RED),
                Frame.whole(1, 1, 0, 50, PngFileTest.RED),
                Frame.whole(1, 1, 65535, 1, PngFileTest.RED)));

        assertThat(film.seconds()).containsExactly(1001 / 30000.0, 0.07, 0.1, 65535);
    }

    /** The image that readers without animations see need not be part of the animation. */
    @Test
    void leavesOutADefaultImageThatIsNoFrame() throws ImageException {
        byte[] file = new PngBuilder()
                .header(1, 1, 8, 6, false)
                .animationControl(1)
                .data(PngBuilder.rows(1, PngFileTest.RED))
                .frameControl(Frame.whole(1, 1, 1, 10))
                .frameData(PngBuilder.rows(1, PngFileTest.GREEN))
                .end();
        Film film = PngFile.read(file);

        assertThat(film.count()).isEqualTo(1);
        assertThat(film.images().get(0)).containsExactly(PngFileTest.GREEN);
    }

    @ParameterizedTest
    @CsvSource({"1, 1, 4097, 4096", "1, 1, -1, 4294967295 images", "4096, 4096, 5, 256 MB"})
    void refusesAnimationsThatAreTooLong(int width, int height, int frames, String message) {
        byte[] file = new PngBuilder()
                .header(width, height, 8, 6, false)
                .animationControl(frames)
                .data(new byte[0])
                .end();
        assertThatThrownBy(() -> PngFile.read(file))
                .isInstanceOf(ImageException.class)
                .hasMessageContaining(message);
    }

    @Test
    void saysWhatIsDamagedInAnAnimation() {
        PngFileTest.assertDamaged(
                PngBuilder.animation(2, 2, new Frame(1, 1, 2, 1, 1, 10, 0, 0, PngFileTest.RED, PngFileTest.RED)),
                "outside of the picture");
        PngFileTest.assertDamaged(
                PngBuilder.animation(1, 1, new Frame(0, 0, 1, 1, 1, 10, 3, 0, PngFileTest.RED)), "no PNG has");
        PngFileTest.assertDamaged(
                PngBuilder.animation(1, 1, new Frame(0, 0, 1, 1, 1, 10, 0, 2, PngFileTest.RED)), "no PNG has");
        PngFileTest.assertDamaged(PngBuilder.animation(1, 1), "0 images");
        byte[] rows = PngBuilder.rows(1, PngFileTest.RED);
        PngFileTest.assertDamaged(
                new PngBuilder()
                        .header(1, 1, 8, 6, false)
                        .animationControl(2)
                        .frameControl(Frame.whole(1, 1, 1, 1))
                        .data(rows)
                        .end(),
                "2 images, but has 1");
        PngFileTest.assertDamaged(
                new PngBuilder()
                        .header(1, 1, 8, 6, false)
                        .animationControl(1)
                        .data(rows)
                        .frameData(rows)
                        .end(),
                "not in order");
        PngFileTest.assertDamaged(
                new PngBuilder()
                        .header(1, 1, 8, 6, false)
                        .animationControl(1)
                        .data(rows)
                        .chunk("fcTL", new byte[3])
                        .end(),
                "not in order");
    }

    private static String hex(Film film, int image) {
        return String.join(
                " ",
                Arrays.stream(film.images().get(image))
                        .mapToObj(pixel -> String.format("%08X", pixel))
                        .toList());
    }
}
