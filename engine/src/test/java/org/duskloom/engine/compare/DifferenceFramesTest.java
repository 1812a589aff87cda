package org.duskloom.engine.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.junit.jupiter.api.Test;

class DifferenceFramesTest {
    private static final PropSpan FENCE = new PropSpan("fence", 0, 1);
    private static final PropSpan GATE = new PropSpan("gate", 1, 1);

    private final Painted dark = new Painted(10, (frame, index) -> 0, FENCE, GATE);

    private static int[] frame(Painted first, Painted second, long frame, long together) throws IOException {
        Comparison comparison = Comparison.of(first.info(), second.info());
        PairedFrames pair = new PairedFrames(first, second, comparison.frames());
        DifferenceFrames drawn =
                new DifferenceFrames(pair, comparison, first.info().pixelCount(), "what changed", together);
        byte[] rgb = new byte[2 + drawn.info().frameBytes()];
        rgb[2] = 99;
        try (FrameReader reader = drawn.reader()) {
            reader.read(frame, rgb, 2);
        }
        int[] light = new int[rgb.length - 2];
        for (int i = 0; i < light.length; i++) {
            light[i] = rgb[i + 2] & 0xFF;
        }
        assertThat(List.of(rgb[0], rgb[1])).containsExactly((byte) 0, (byte) 0);
        return light;
    }

    /** From 72, which can be told from black, to 255: code c is 72 + c · 183/255, rounded down. */
    @Test
    void lightGrowsWithTheDifferenceAndTheSameIsBlack() throws IOException {
        Painted some = new Painted(10, (frame, index) -> new int[] {0, 1, 255, 0, 0, 128}[index], FENCE, GATE);
        assertThat(frame(dark, some, 3, 1)).containsExactly(0, 72, 255, 0, 0, 72 + 128 * 183 / 255);
        assertThat(frame(some, dark, 3, 1)).containsExactly(0, 72, 255, 0, 0, 163);
        assertThat(frame(some, some, 3, 1)).containsOnly(0);
    }

    /** Of several frames the largest difference is seen, and none beyond the last is asked for. */
    @Test
    void framesTogetherShowTheLargest() throws IOException {
        Painted growing = new Painted(10, (frame, index) -> index == 0 ? (int) (10 * frame) : 0, FENCE, GATE);
        assertThat(frame(dark, growing, 2, 1)[0]).isEqualTo(72 + 20 * 183 / 255);
        assertThat(frame(dark, growing, 2, 3)[0]).isEqualTo(72 + 40 * 183 / 255);
        assertThat(frame(dark, growing, 8, 5)[0]).isEqualTo(72 + 90 * 183 / 255);
        Painted flash = new Painted(10, (frame, index) -> frame == 2 ? 200 : 0, FENCE, GATE);
        assertThat(frame(dark, flash, 1, 4)).containsOnly(72 + 200 * 183 / 255);
    }

    /** Only what can be compared is drawn, in the order of the first. */
    @Test
    void propsThatOnlyOneHasAreNotDrawn() throws IOException {
        Painted gateFirst = new Painted(
                10, (frame, index) -> index < 3 ? 255 : 0, new PropSpan("gate", 0, 1), new PropSpan("pond", 1, 4));
        assertThat(frame(dark, gateFirst, 0, 1)).containsExactly(255, 255, 255);
    }

    @Test
    void saysWhatItShows() {
        Comparison comparison = Comparison.of(dark.info(), dark.info());
        PairedFrames pair = new PairedFrames(dark, dark, comparison.frames());
        assertThat(pair.info().pixelCount()).isEqualTo(4);
        RunInfo drawn = new DifferenceFrames(pair, comparison, 2, "what changed", 1).info();
        assertThat(drawn.title()).isEqualTo("what changed");
        assertThat(drawn.rate()).isEqualTo(dark.info().rate());
        assertThat(drawn.frames()).hasToString("frames 0..10");
        assertThat(drawn.pixels().props()).containsExactly(FENCE, GATE);
    }

    /** A source that cannot be read leaves the other closed. */
    @Test
    void closesTheFirstIfTheSecondCannotBeOpened() {
        FrameSource broken = new FrameSource() {
            @Override
            public RunInfo info() {
                return dark.info();
            }

            @Override
            public FrameReader reader() throws IOException {
                throw new IOException("gone");
            }
        };
        PairedFrames pair = new PairedFrames(
                dark, broken, Comparison.of(dark.info(), dark.info()).frames());
        assertThatThrownBy(pair::reader).isInstanceOf(IOException.class).hasMessage("gone");
        assertThat(dark.open()).isZero();
    }
}
