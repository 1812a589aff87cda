package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import org.duskloom.engine.file.OutputRefusedException;
import org.junit.jupiter.api.Test;

class StripPanelsTest {
    private static final int GREEN = 0x00FF00;
    private static final byte[] LIT = {0, (byte) 255, 0};

    /** Two panels of 100 by 100 dots side by side: the one pixel is in the middle of each, at offset 3 and at 0. */
    @Test
    void eachFrameGoesIntoTheNextPanel() throws IOException {
        StripOptions options = new StripOptions(OptionalInt.of(2), OptionalInt.of(100), false);
        StripPanels panels = new StripPanels(scene(0), 2, options);
        StripLayout layout = StripLayout.of(1, 1, 2, options);
        panels.draw(0, new byte[] {0, 0, 0, 0, (byte) 255, 0}, 3);
        panels.draw(1, new byte[3], 0);
        Raster sheet = panels.complete();
        assertThat(sheet.width()).isEqualTo((int) layout.width());
        assertThat(sheet.height()).isEqualTo((int) layout.height());
        int middle = layout.panelHeight() / 2;
        assertThat(sheet.colourAt(layout.panelLeft(0) + 50, layout.panelTop(0) + middle))
                .isEqualTo(GREEN);
        assertThat(sheet.colourAt(layout.panelLeft(1) + 50, layout.panelTop(1) + middle))
                .isEqualTo(Ink.UNLIT);
    }

    /** What another sheet holds is what a sheet of its own would: nothing of the first one's panels, and its head. */
    @Test
    void anotherSheetBeginsEmpty() throws IOException {
        StripOptions options = new StripOptions(OptionalInt.of(1), OptionalInt.of(100), true);
        StripPanels first = new StripPanels(scene(0), 1, options);
        first.draw(0, LIT, 0);
        byte[] before = first.complete().png();
        StripPanels second = first.another();
        assertThatThrownBy(second::complete).hasMessage("0 panels of 1");
        second.draw(7, new byte[3], 0);
        StripPanels alone = new StripPanels(scene(0), 1, options);
        alone.draw(7, new byte[3], 0);
        assertThat(second.complete().png()).isEqualTo(alone.complete().png()).isNotEqualTo(before);
        assertThat(first.complete().png()).isEqualTo(before);
    }

    @Test
    void emptyPanelsAreAFault() throws IOException {
        StripPanels panels = new StripPanels(scene(0), 3, StripOptions.standard());
        panels.draw(0, LIT, 0);
        assertThatThrownBy(panels::complete)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("1 panels of 3");
    }

    /** Eleven pixels a metre apart: ten spaces as wide as pixels of that size need, and 0.045 of that at each side. */
    @Test
    void pixelsOfASizeMakeRoomForThemselves() throws IOException {
        int wanted = (int) Math.ceil(10.9 * SceneDrawing.spacingFor(40));
        assertThat(wanted).isGreaterThan(StripOptions.NARROWEST);
        assertThat(sheetWidth(sized(OptionalInt.empty(), 40))).isEqualTo(2 * 24 + wanted);
        assertThat(sheetWidth(sized(OptionalInt.of(90), 40))).isEqualTo(2 * 24 + 90);
        assertThat(sheetWidth(sized(OptionalInt.empty(), 1))).isEqualTo(2 * 24 + StripOptions.NARROWEST);
    }

    /** A thousand million spaces between two near neighbours: more dots than an int holds, and no negative number. */
    @Test
    void pixelsFarApartForTheirSizeAreRefused() {
        StripOptions options = new StripOptions(OptionalInt.of(1), OptionalInt.empty(), OptionalInt.of(100), false);
        PreviewScene far = scene(0, 1, 2, 3, 1e9);
        assertThatThrownBy(() -> new StripPanels(far, 1, options)).isInstanceOf(OutputRefusedException.class);
    }

    private static StripOptions sized(OptionalInt panelWidth, int pixelSize) {
        return new StripOptions(OptionalInt.of(1), panelWidth, OptionalInt.of(pixelSize), false);
    }

    private static int sheetWidth(StripOptions options) throws IOException {
        StripPanels panels = new StripPanels(scene(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10), 1, options);
        panels.draw(0, new byte[33], 0);
        return panels.complete().width();
    }

    private static PreviewScene scene(double... x) {
        return new PreviewScene("", x, new double[x.length], List.of(), frame -> frame);
    }
}
