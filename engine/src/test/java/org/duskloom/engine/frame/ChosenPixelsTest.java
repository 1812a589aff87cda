package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;

class ChosenPixelsTest {
    private final FrameSource whole = new FrameSource() {
        @Override
        public RunInfo info() {
            double[] x = {0, 1, 2, 3, 4, 5};
            return RunInfo.ofWhole(
                    "Six",
                    FrameRate.of(40),
                    9,
                    new FramePixels(
                            6,
                            List.of(new PropSpan("a", 0, 2), new PropSpan("b", 2, 3), new PropSpan("c", 5, 1)),
                            Optional.of(new Positions(x, x, x))));
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) -> {
                for (int i = 0; i < 18; i++) {
                    rgb[offset + i] = (byte) (100 * frame + i);
                }
            };
        }
    };

    @Test
    void keepsTheirLightTheirPlacesAndTheirProps() throws IOException {
        FrameSource chosen = new ChosenPixels(whole, new int[] {1, 3, 4});
        RunInfo info = chosen.info();
        assertThat(info.pixelCount()).isEqualTo(3);
        assertThat(info.pixels().props()).containsExactly(new PropSpan("a", 0, 1), new PropSpan("b", 1, 2));
        assertThat(info.pixels().places().orElseThrow().x(2)).isEqualTo(4);
        byte[] rgb = new byte[10];
        chosen.reader().read(1, rgb, 1);
        assertThat(rgb).containsExactly(0, 103, 104, 105, 109, 110, 111, 112, 113, 114);
    }

    @Test
    void theyMustRise() {
        assertThatThrownBy(() -> new ChosenPixels(whole, new int[] {3, 1}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
