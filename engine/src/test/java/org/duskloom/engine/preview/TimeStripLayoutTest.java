package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.PropSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes of time strips, added up by hand: 24 dots at every edge, 81 over the field, 240 of it at the least. */
class TimeStripLayoutTest {
    private static final OptionalInt CHOSEN = OptionalInt.empty();

    /** Cells fill 1600 by 900 dots, of 1 to 8 dots: 1600 / 500 is 3, 900 / 200 is 4. */
    @ParameterizedTest
    @CsvSource({
        "1, 1, 8, 288, 113",
        "100, 100, 8, 848, 905",
        "500, 10, 3, 1548, 135",
        "100, 200, 4, 448, 905",
        "100, 901, 1, 288, 1006",
        "1601, 5, 1, 1649, 110",
        "30, 5, 8, 288, 145",
        "0, 5, 8, 288, 145"
    })
    void cellsSuitAScreen(long frames, int pixels, int cell, long width, long height) throws OutputRefusedException {
        TimeStripLayout layout = TimeStripLayout.of(scene(pixels), 0, frames, 1, CHOSEN);
        assertThat(layout).isEqualTo(new TimeStripLayout(frames, pixels, cell, 24));
        assertThat(layout.width()).isEqualTo(width);
        assertThat(layout.height()).isEqualTo(height);
    }

    /** 895 pixels are a picture 1000 dots high, so it may be 100,000 wide, of which 48 are its edges. */
    @Test
    void saysWhichFramesFit() throws OutputRefusedException {
        PreviewScene scene = scene(895);
        assertThat(TimeStripLayout.mostColumns(scene)).isEqualTo(99_952);
        assertThat(TimeStripLayout.of(scene, 7, 99_952, 1, CHOSEN).width()).isEqualTo(100_000);
        assertRefused(scene, 7, 99_953, 1, 1, "100001 by 1000", "at most 99952 frames fit, such as 7..99959");
        assertRefused(scene, 7, 99_953, 2, 1, "such as 7..199911");
    }

    /** With cells of five dots it is 4580 high: 21,834 wide, 21,786 of the field, 4357 columns. */
    @Test
    void smallerCellsHelp() {
        assertRefused(scene(895), 0, 4358, 1, 5, "at most 4357 frames fit, such as 0..4357, or choose smaller cells");
        assertRefused(scene(400_000), 0, 1, 1, 2, "; choose smaller cells");
        assertRefused(scene(400_000), 0, 1, 1, 1, "; there are too many pixels");
    }

    /** 347,222 rows of 288 dots are just under a hundred million; 105 of them lie over and under the field. */
    @Test
    void theNarrowestFieldDecidesHowManyPixelsThereAreAtMost() {
        assertThat(TimeStripLayout.mostColumns(scene(347_117))).isEqualTo(240);
        assertThat(TimeStripLayout.mostColumns(scene(347_118))).isZero();
    }

    /** Ten rows have room for a name, nine have not: then it takes no column either. */
    @Test
    void namesTakeWhatTheWidestNeeds() throws OutputRefusedException {
        int width = PixelFont.standard().width("fence");
        assertThat(fieldLeft(1, new PropSpan("fence", 0, 10), new PropSpan("a much longer name", 10, 9)))
                .isEqualTo(24 + width + 12);
        assertThat(fieldLeft(1, new PropSpan("fence", 0, 9))).isEqualTo(24);
        assertThat(fieldLeft(2, new PropSpan("fence", 0, 5))).isEqualTo(24 + width + 12);
        assertThat(fieldLeft(1, new PropSpan("x".repeat(500), 0, 19))).isEqualTo(24 + 150 + 12);
        assertThat(fieldLeft(1, new PropSpan("", 0, 19))).isEqualTo(24);
    }

    private static int fieldLeft(int cell, PropSpan... props) throws OutputRefusedException {
        PreviewScene scene = new PreviewScene("", new double[19], new double[19], List.of(props), n -> n);
        return TimeStripLayout.of(scene, 0, 10, 1, OptionalInt.of(cell)).fieldLeft();
    }

    private static PreviewScene scene(int pixels) {
        return new PreviewScene("", new double[pixels], new double[pixels], List.of(), n -> n);
    }

    private static void assertRefused(
            PreviewScene scene, long first, long frames, long perColumn, int cell, String... told) {
        assertThatThrownBy(() -> TimeStripLayout.of(scene, first, frames, perColumn, OptionalInt.of(cell)))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageContainingAll(told);
    }
}
