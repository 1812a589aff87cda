package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;

class PreviewSceneTest {
    private static final double[] THREE = {1, 2, 3};
    private static final PixelFont FONT = PixelFont.standard();

    @Test
    void hasAPlaceForEveryPixel() {
        assertThatThrownBy(() -> scene(new double[0], new double[0]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("0 x and 0 y");
        assertThatThrownBy(() -> scene(THREE, new double[2]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("3 x and 2 y");
    }

    /** Seen from the front: z is not kept. At 24,000/1001 frames per second frame 24 is at 1.001 seconds. */
    @Test
    void isThatOfARun() {
        Positions places = new Positions(new double[] {4, 5}, new double[] {6, 7}, new double[] {8, 9});
        FramePixels pixels = new FramePixels(2, List.of(new PropSpan("gate", 0, 2)), Optional.of(places));
        PreviewScene scene = PreviewScene.of(RunInfo.ofWhole("Dusk", new FrameRate(24_000, 1001), 48, pixels));
        assertThat(scene.x()).containsExactly(4, 5);
        assertThat(scene.y()).containsExactly(6, 7);
        assertThat(scene.title()).isEqualTo("Dusk");
        assertThat(scene.secondsOfFrame().applyAsDouble(24)).isEqualTo(1.001);
        assertThat(scene.size()).isEqualTo("2 pixels in 1 prop");
    }

    @Test
    void framesThatHangNowhereHaveNone() {
        RunInfo run = RunInfo.ofWhole("", FrameRate.of(40), 48, FramePixels.unnamed(2));
        assertThatThrownBy(() -> PreviewScene.of(run))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("it is not known where the pixels hang");
    }

    @Test
    void numbersOfFramesAreShortenedAsTheRoomBecomesLess() {
        PreviewScene scene = scene(THREE, THREE);
        assertThat(scene.caption(1234, FONT.width("frame 1234"))).isEqualTo("frame 1234");
        assertThat(scene.caption(1234, FONT.width("frame 1234") - 1)).isEqualTo("1234f");
        assertThat(scene.caption(1234, FONT.width("1234f") - 1)).isEmpty();
        assertThat(scene.caption(1234, -5)).isEmpty();
    }

    /** A caption that does not fit is cut, and does not fall back to a number. */
    @Test
    void captionsStandInsteadOfNumbers() {
        PreviewScene scene = new PreviewScene(
                "", THREE, THREE, List.of(), frame -> 0, Optional.of(frame -> "The pond wakes " + frame));
        assertThat(scene.caption(8, 500)).isEqualTo("The pond wakes 8");
        assertThat(scene.caption(8, FONT.width("The pond…"))).isEqualTo("The pond…");
        assertThat(scene.caption(8, 0)).isEmpty();
    }

    @Test
    void sizesAreGroupedByThousands() {
        assertThat(scene(new double[1], new double[1]).size()).isEqualTo("1 pixel");
        assertThat(scene(new double[12_345], new double[12_345]).size()).isEqualTo("12,345 pixels");
    }

    private static PreviewScene scene(double[] x, double[] y) {
        return new PreviewScene("", x, y, List.of(), frame -> 0);
    }
}
