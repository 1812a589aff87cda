package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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

    /** What lies before the first of them and behind the last is not asked for. */
    @Test
    void asksForAsFewPixelsAsPossible() throws IOException {
        List<String> asked = new ArrayList<>();
        FrameSource telling = new FrameSource() {
            @Override
            public RunInfo info() {
                return whole.info();
            }

            @Override
            public FrameReader reader() {
                throw new AssertionError("all of them");
            }

            @Override
            public FrameReader reader(int firstPixel, int endPixel) throws IOException {
                asked.add(firstPixel + ".." + endPixel);
                return FrameSource.super.reader(firstPixel, endPixel);
            }
        };
        assertThatThrownBy(() -> new ChosenPixels(telling, new int[] {1, 3, 4}).reader())
                .hasMessage("all of them");
        assertThat(asked).containsExactly("1..5");
    }

    /** A stretch that no source knows how to have cheaper is cut out of the whole, and closing closes that. */
    @Test
    void aStretchIsCutOutOfTheWhole() throws IOException {
        byte[] rgb = new byte[8];
        whole.reader(2, 4).read(1, rgb, 1);
        assertThat(rgb).containsExactly(0, 106, 107, 108, 109, 110, 111, 0);
        List<String> closed = new ArrayList<>();
        FrameReader reader = new FrameReader() {
            @Override
            public void read(long frame, byte[] bytes, int offset) {}

            @Override
            public void close() {
                closed.add("whole");
            }
        };
        new StretchReader(reader, 18, 0, 1).close();
        assertThat(closed).containsExactly("whole");
    }

    @Test
    void theyMustRise() {
        assertThatThrownBy(() -> new ChosenPixels(whole, new int[] {3, 1}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Any choice at all: each pixel keeps its light and its prop, and props of which none is left are gone. */
    @Test
    void anyChoiceKeepsWhatItChose() throws IOException {
        FramePixels six = whole.info().pixels();
        for (int choice = 1; choice < 1 << 6; choice++) {
            int chosenBits = choice;
            int[] pixels = IntStream.range(0, 6)
                    .filter(pixel -> (chosenBits >> pixel & 1) != 0)
                    .toArray();
            FrameSource chosen = new ChosenPixels(whole, pixels);
            byte[] all = new byte[18];
            byte[] some = new byte[3 * pixels.length];
            whole.reader().read(4, all, 0);
            chosen.reader().read(4, some, 0);
            for (int i = 0; i < pixels.length; i++) {
                assertThat(Arrays.copyOfRange(some, 3 * i, 3 * i + 3))
                        .isEqualTo(Arrays.copyOfRange(all, 3 * pixels[i], 3 * pixels[i] + 3));
                assertThat(propOf(chosen.info().pixels(), i)).isEqualTo(propOf(six, pixels[i]));
            }
            assertThat(chosen.info().pixels().props())
                    .allSatisfy(prop -> assertThat(prop.pixelCount()).isPositive());
        }
    }

    private static String propOf(FramePixels pixels, int pixel) {
        return pixels.props().stream()
                .filter(prop -> prop.firstPixel() <= pixel && pixel < prop.firstPixel() + prop.pixelCount())
                .map(PropSpan::name)
                .collect(Collectors.joining());
    }

    /** What is told of the frames themselves is told of those with fewer pixels too. */
    @Test
    void leavesTheRestAsItIs() {
        RunInfo info = new ChosenPixels(whole, new int[] {2}).info();
        assertThat(info.title()).isEqualTo("Six");
        assertThat(info.rate()).isEqualTo(FrameRate.of(40));
        assertThat(info.showFrames()).isEqualTo(9);
        assertThat(info.frames()).hasToString("frames 0..9");
        assertThat(info.frameBytes()).isEqualTo(3);
    }

    @Test
    void keepsItsOwnChoice() throws IOException {
        int[] pixels = {2};
        FrameSource chosen = new ChosenPixels(whole, pixels);
        pixels[0] = 5;
        byte[] rgb = new byte[3];
        chosen.reader().read(0, rgb, 0);
        assertThat(rgb).containsExactly(6, 7, 8);
    }

    @Test
    void chosenPixelsAreSomeOfTheWhole() {
        assertThatThrownBy(() -> new ChosenPixels(whole, new int[0])).hasMessage("0 pixels");
        assertThatThrownBy(() -> new ChosenPixels(whole, new int[] {2, 2})).hasMessage("pixel 2 after 2");
        assertThatThrownBy(() -> new ChosenPixels(whole, new int[] {0, 6})).hasMessage("pixel 6 of 6");
        assertThatThrownBy(() -> new ChosenPixels(whole, new int[] {-1, 0})).hasMessage("pixel -1 of 6");
    }
}
