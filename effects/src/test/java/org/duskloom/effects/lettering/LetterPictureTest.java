package org.duskloom.effects.lettering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.Palette;
import org.junit.jupiter.api.Test;

class LetterPictureTest {
    private static final Palette WHITE = Look.evenly(ColorMix.LINEAR, "white");
    private static final Palette BLUE = Look.evenly(ColorMix.LINEAR, "blue");

    @Test
    void hasOnePixelForADot() {
        assertThat(drawing(picture("#.#", "..#", 0))).isEqualTo("W.W/..W");
    }

    /** An outline of a dot surrounds each dot, at the corners too. */
    @Test
    void outlinesDots() {
        assertThat(drawing(picture("#...", "....", 1))).isEqualTo("BBB.../BWB.../BBB.../......");
        assertThat(drawing(picture("#.#", "...", 2))).isEqualTo("BBBBBBB/BBBBBBB/BBWBWBB/BBBBBBB/BBBBBBB/.......");
    }

    /** Half a dot is two of four pixels to the side. */
    @Test
    void outlinesByPartsOfADot() {
        LetterPicture picture = picture("#", ".", 0.5);

        assertThat(picture.columns()).isEqualTo(2);
        assertThat(picture.rows()).isEqualTo(3);
        assertThat(drawing(picture))
                .isEqualTo("BBBBBBBB/BBBBBBBB/BBWWWWBB/BBWWWWBB/BBWWWWBB/BBWWWWBB/BBBBBBBB/BBBBBBBB"
                        + "/......../......../......../........");
    }

    /**
     * Two rows of capitals under none: their middle is one row from the top, of two rows; with margins, two of four.
     */
    @Test
    void knowsTheMiddleOfACapital() {
        assertThat(picture("#", "#", 0).capitalMiddle()).isEqualTo(0.5);
        assertThat(picture("#", "#", 1).capitalMiddle()).isEqualTo(0.5);
        DotLine low = new DotLine(1, 10, 2, 7, new BitSet());
        assertThat(LetterPicture.of(low, new LetterPicture.Colors(WHITE, BLUE, 0))
                        .capitalMiddle())
                .isCloseTo(0.55, within(1e-12));
    }

    /** Black to white in linear light over four columns: 1/8, 3/8, 5/8, 7/8. */
    @Test
    void colorsTheTextFromItsLeftToItsRight() {
        Palette grey = Look.evenly(ColorMix.LINEAR, "black", "white");
        LetterPicture picture = LetterPicture.of(line("####"), new LetterPicture.Colors(grey, BLUE, 1));

        float[] light = picture.image().light();
        for (int column = 0; column < 4; column++) {
            int middleRow = (6 + 1 + column) * 4;
            assertThat(light[middleRow]).isCloseTo((2 * column + 1) / 8f, within(1e-6f));
        }
    }

    /** What is drawn is premultiplied, and an outline does not shine through its letter. */
    @Test
    void premultiplies() {
        Palette veil = Look.evenly(ColorMix.LINEAR, "#ff000080");
        LetterPicture picture = LetterPicture.of(line("#"), new LetterPicture.Colors(veil, BLUE, 1));

        float[] light = picture.image().light();
        assertThat(light[16]).isEqualTo(128 / 255f);
        assertThat(light[18]).isZero();
        assertThat(light[19]).isEqualTo(128 / 255f);
    }

    private static LetterPicture picture(String first, String second, double thickness) {
        return LetterPicture.of(line(first, second), new LetterPicture.Colors(WHITE, BLUE, thickness));
    }

    private static DotLine line(String... rows) {
        BitSet ink = new BitSet();
        String all = String.join("", rows);
        for (int i = 0; i < all.length(); i++) {
            ink.set(i, all.charAt(i) == '#');
        }
        return new DotLine(rows[0].length(), rows.length, 0, rows.length, ink);
    }

    private static String drawing(LetterPicture picture) {
        StringBuilder text = new StringBuilder();
        int width = picture.image().width();
        for (int i = 0; i < width * picture.image().height(); i++) {
            float[] light = picture.image().light();
            text.append(i > 0 && i % width == 0 ? "/" : "");
            text.append(light[4 * i + 3] == 0 ? '.' : light[4 * i] == 1 ? 'W' : 'B');
        }
        return text.toString();
    }
}
