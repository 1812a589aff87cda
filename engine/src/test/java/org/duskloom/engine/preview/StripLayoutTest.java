package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Rectangle;
import java.util.OptionalInt;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.font.PixelFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripLayoutTest {
    @ParameterizedTest
    @CsvSource({
        "1, 1, 1",
        "1, 1, 12",
        "1.5, 854, 12",
        "1.5, 854, 1",
        "1.5, 854, 7",
        "0, 80, 8",
        "Infinity, 100, 9",
        "0.01, 5000, 5",
        "30, 20000, 24",
        "2, 100000, 3",
        "1.5, 854, 500",
        "0, 80, 1000"
    })
    void panelsLieOnTheSheetAndApart(double aspect, int pixels, int panels) throws OutputRefusedException {
        StripLayout layout = StripLayout.of(aspect, pixels, panels, StripOptions.standard());
        Rectangle sheet = new Rectangle((int) layout.width(), (int) layout.height());
        assertThat(layout.columns() * layout.rows()).isGreaterThanOrEqualTo(panels);
        assertThat(sheet.width).isLessThanOrEqualTo(1800);
        for (int i = 0; i < panels; i++) {
            Rectangle cell = cell(layout, i);
            assertThat(sheet.contains(cell)).isTrue();
            assertThat(i + 1 < panels && cell.intersects(cell(layout, i + 1))).isFalse();
            int below = i + layout.columns();
            assertThat(below < panels && cell.intersects(cell(layout, below))).isFalse();
        }
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.5", "1, 1", "2.5, 2.5", "0, 0.4", "Infinity, 7", "50, 7"})
    void panelsFollowTheDisplayWithinBounds(double displayAspect, double panelAspect) throws OutputRefusedException {
        StripLayout layout = StripLayout.of(displayAspect, 2000, 6, StripOptions.standard());
        assertThat((double) layout.panelWidth() / layout.panelHeight()).isCloseTo(panelAspect, within(0.06));
    }

    @Test
    void leavesNoMorePlacesEmptyThanARow() throws OutputRefusedException {
        for (int panels = 1; panels < 100; panels++) {
            StripLayout layout = StripLayout.of(1.5, 854, panels, StripOptions.standard());
            assertThat(layout.columns() * layout.rows() - panels).isLessThan(layout.columns());
        }
    }

    /** Panels of a given width, also as many as cannot be laid out in full rows: 71 and 113 are prime. */
    @ParameterizedTest
    @CsvSource({"0.3, 71", "0.3, 70", "0.4, 113", "0, 24", "0.8, 71", "2.1, 68", "1, 113"})
    void aPictureOfManyPanelsIsRoughlyAsWideAsHigh(double aspect, int panels) throws OutputRefusedException {
        StripOptions options = new StripOptions(OptionalInt.empty(), OptionalInt.of(300), false);
        StripLayout layout = StripLayout.of(aspect, 2490, panels, options);
        assertThat((double) layout.width() / layout.height()).isBetween(0.5, 1.6);
        assertThat(layout.columns() * layout.rows() - panels).isLessThan(layout.columns());
    }

    /**
     * Where nothing is given, the picture is no wider than a screen, and uses that width: 71 small panels are no tower.
     */
    @ParameterizedTest
    @CsvSource({"0.3, 71", "1.5, 71", "0, 113"})
    void manyPanelsUseTheWidthOfAScreen(double aspect, int panels) throws OutputRefusedException {
        StripLayout layout = StripLayout.of(aspect, 2490, panels, StripOptions.standard());
        assertThat(layout.width()).isBetween(1400L, 1800L);
    }

    @Test
    void takesWhatIsAskedFor() throws OutputRefusedException {
        StripOptions options = new StripOptions(OptionalInt.of(5), OptionalInt.of(700), false);
        StripLayout layout = StripLayout.of(2, 854, 12, options);
        assertThat(layout).isEqualTo(new StripLayout(5, 3, 700, 350));
        StripLayout narrow =
                StripLayout.of(2, 854, 12, new StripOptions(OptionalInt.empty(), OptionalInt.of(64), true));
        assertThat(narrow.panelWidth()).isEqualTo(64);
        assertThat(narrow.columns()).isEqualTo(12);
        StripOptions many = new StripOptions(OptionalInt.of(Integer.MAX_VALUE), OptionalInt.of(100), false);
        assertThat(StripLayout.of(1, 854, 3, many)).isEqualTo(new StripLayout(3, 1, 100, 100));
    }

    @Test
    void refusesHugeSheetsAndPanels() {
        assertThatThrownBy(() -> StripLayout.of(1.5, 854, 100_000, StripOptions.standard()))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageContaining("100,000 moments")
                .hasMessageContaining("100 million");
        StripOptions wide = new StripOptions(OptionalInt.of(1), OptionalInt.of(9000), false);
        assertThatThrownBy(() -> StripLayout.of(1, 854, 1, wide))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageContaining("9000 by 9000");
        StripOptions widest = new StripOptions(OptionalInt.empty(), OptionalInt.of(Integer.MAX_VALUE), false);
        assertThatThrownBy(() -> StripLayout.of(1, 854, 9, widest)).isInstanceOf(OutputRefusedException.class);
    }

    @Test
    void optionsHaveBounds() {
        assertThatThrownBy(() -> new StripOptions(OptionalInt.of(0), OptionalInt.empty(), false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StripOptions(OptionalInt.empty(), OptionalInt.of(63), false))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A panel and the line under it. */
    private static Rectangle cell(StripLayout layout, int index) {
        int bottom = layout.labelTop(index) + PixelFont.CAPITAL_ROWS * layout.labelScale();
        int top = layout.panelTop(index);
        return new Rectangle(layout.panelLeft(index), top, layout.panelWidth(), bottom - top);
    }
}
