package org.duskloom.engine.meter.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.duskloom.engine.frame.FramePixels;
import org.junit.jupiter.api.Test;

/** Pixels 0 to 4, of which two are of the first prop; then both props, 5 and 6; then the whole, 7. */
class SignalLayoutTest {
    private static final SignalLayout LAYOUT = SignalLayout.of(Flickers.props(2, 3));

    @Test
    void numbersPixelsThenPropsThenTheWhole() {
        assertThat(LAYOUT.signalCount()).isEqualTo(8);
        assertThat(LAYOUT.ofProp(0)).isEqualTo(5);
        assertThat(LAYOUT.ofProp(1)).isEqualTo(6);
        assertThat(LAYOUT.ofWhole()).isEqualTo(7);
        assertThat(LAYOUT.isPixel(4)).isTrue();
        assertThat(LAYOUT.isPixel(5)).isFalse();
    }

    @Test
    void knowsWhoseLightItIs() {
        int[] groups = {0, 0, 1, 1, 1, 0, 1, 2};
        for (int signal = 0; signal < groups.length; signal++) {
            assertThat(LAYOUT.group(signal)).as("signal " + signal).isEqualTo(groups[signal]);
        }
    }

    /** A pixel is named by its number in its prop. */
    @Test
    void saysWhere() {
        assertThat(LAYOUT.place(1)).isEqualTo(new FlashPlace(OptionalInt.of(0), OptionalInt.of(1)));
        assertThat(LAYOUT.place(4)).isEqualTo(new FlashPlace(OptionalInt.of(1), OptionalInt.of(2)));
        assertThat(LAYOUT.place(6)).isEqualTo(new FlashPlace(OptionalInt.of(1), OptionalInt.empty()));
        assertThat(LAYOUT.place(7)).isEqualTo(new FlashPlace(OptionalInt.empty(), OptionalInt.empty()));
    }

    @Test
    void pixelsOfNoPropAreOne() {
        SignalLayout layout = SignalLayout.of(FramePixels.unnamed(9));
        assertThat(layout.props()).hasSize(1);
        assertThat(layout.group(8)).isZero();
        assertThat(layout.signalCount()).isEqualTo(11);
    }
}
