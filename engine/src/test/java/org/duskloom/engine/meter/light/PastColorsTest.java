package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The colours of the second that is past, and no longer. */
class PastColorsTest {
    private static final SignalLayout LAYOUT = SignalLayout.of(Flickers.props(2, 1));

    /** Frame n shows the code 10 n in the red of pixel 1; a second of one frame still remembers the one before. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void remembersASecond(int framesOfSecond) {
        PastColors past = new PastColors(LAYOUT, framesOfSecond);
        for (int place = 0; place < 20; place++) {
            past.keep(place, frame(10 * place), 4);
        }

        assertThat(past.reach()).isEqualTo(Math.max(1, framesOfSecond - 1));
        for (int back = 0; back <= past.reach(); back++) {
            double[] color = new double[3];
            past.read(1, 19 - back, color);
            assertThat(color).containsExactly(PlainFlashes.linear((190 - 10 * back) << 16));
        }
    }

    @Test
    void tellsWhetherPixelsAreTheSame() {
        PastColors past = new PastColors(LAYOUT, 2);
        past.keep(0, frame(7), 4);
        past.keep(1, frame(7), 4);
        assertThat(past.areSame(1, 0, 3)).isTrue();

        past.keep(2, frame(8), 4);
        assertThat(past.areSame(2, 0, 1)).isTrue();
        assertThat(past.areSame(2, 1, 2)).isFalse();
        assertThat(past.areSame(2, 2, 3)).isTrue();
    }

    /** The mean of a prop stays until another is set; its red is that of the frame. */
    @Test
    void holdsMeans() {
        PastColors past = new PastColors(LAYOUT, 4);
        int prop = LAYOUT.ofProp(1);
        int half = CodeLight.ONE / 2;
        past.keep(0, grey(188), 4);
        past.keepMean(0, prop, half, -half);
        past.keep(1, grey(188), 4);
        past.keep(2, frame(0), 4);
        past.keepMean(2, prop, 0, 0);

        double[] color = new double[3];
        past.read(prop, 1, color);
        assertThat(color).containsExactly(new double[] {0.5, 0.5, 0.5}, within(5e-3));
        past.read(prop, 2, color);
        assertThat(color).containsExactly(0, 0, 0);
    }

    private static byte[] grey(int code) {
        byte[] rgb = new byte[4 + 9];
        Arrays.fill(rgb, (byte) code);
        return rgb;
    }

    private static byte[] frame(int code) {
        byte[] rgb = new byte[4 + 9];
        rgb[4 + 3] = (byte) code;
        return rgb;
    }
}
