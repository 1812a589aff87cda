package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Frames on their way, and what is said of them before they come. */
class FrameBatchTest {
    /** Byte i of frame n is 10 n + i. */
    private static final FrameReader RAMP = (frame, rgb, offset) -> {
        for (int i = 0; i < 3; i++) {
            rgb[offset + i] = (byte) (10 * frame + i);
        }
    };

    @Test
    void holdsFramesBehindEachOther() throws IOException {
        FrameBatch batch = FrameBatch.of(FrameList.of(2, 5, 6), 3, RAMP);
        assertThat(batch.count()).isEqualTo(3);
        assertThat(List.of(batch.frame(0), batch.frame(1), batch.frame(2))).containsExactly(2L, 5L, 6L);
        assertThat(batch.offset(2)).isEqualTo(6);
        assertThat(batch.bytes()).isEqualTo(9);
        assertThat(batch.place(1)).isEqualTo(1);
        assertThat(batch.rgb()).containsExactly(20, 21, 22, 50, 51, 52, 60, 61, 62);
    }

    @Test
    void mayBeASingleFrame() {
        byte[] rgb = {1, 2, 3, 4, 5, 6};
        FrameBatch batch = FrameBatch.of(7, rgb);
        assertThat(batch.rgb()).isSameAs(rgb);
        assertThat(batch.frame(0)).isEqualTo(7);
        assertThat(batch.frameBytes()).isEqualTo(6);
        assertThat(batch.bytes()).isEqualTo(6);
    }

    @Test
    void isUsedAgainForOtherFrames() throws IOException {
        FrameBatch batch = new FrameBatch(FrameList.of(new FrameSpan(10, 20)), 4, 3);
        batch.set(4, 2).fill(RAMP);
        assertThat(List.of(batch.frame(0), batch.frame(1))).containsExactly(14L, 15L);
        assertThat(batch.bytes()).isEqualTo(6);
        assertThat(Arrays.copyOf(batch.rgb(), 6))
                .containsExactly((byte) 140, (byte) 141, (byte) 142, (byte) 150, (byte) 151, (byte) 152);
    }

    /** Against a list that grows: bytes stay in their order however they come, and clearing forgets them. */
    @Test
    void bytesGrowAsTheyAreMade() {
        Random random = new Random(6);
        EncodedBytes bytes = new EncodedBytes();
        for (int run = 0; run < 50; run++) {
            byte[] expected = new byte[0];
            bytes.clear();
            for (int piece = random.nextInt(9); piece >= 0; piece--) {
                byte[] more = new byte[3 + random.nextInt(900)];
                random.nextBytes(more);
                int from = random.nextInt(3);
                int count = more.length - 3;
                if (piece % 2 == 0) {
                    bytes.put(more, from, count);
                } else {
                    int at = bytes.reserve(count);
                    assertThat(at).isEqualTo(expected.length);
                    System.arraycopy(more, from, bytes.array(), at, count);
                }
                int before = expected.length;
                expected = Arrays.copyOf(expected, before + count);
                System.arraycopy(more, from, expected, before, count);
            }
            assertThat(bytes.length()).isEqualTo(expected.length);
            assertThat(Arrays.copyOf(bytes.array(), bytes.length())).isEqualTo(expected);
        }
        bytes.clear();
        assertThat(bytes.length()).isZero();
    }

    private static RunInfo show(long frames) {
        return RunInfo.ofWhole("show", FrameRate.of(40), frames, FramePixels.unnamed(5));
    }

    @Test
    void aRunKnowsItsSizes() {
        RunInfo some = show(100).only(FrameList.of(3, 99));
        assertThat(some.frameBytes()).isEqualTo(15);
        assertThat(some.pixelCount()).isEqualTo(5);
        assertThat(some.showFrames()).isEqualTo(100);
        assertThat(some.frames().count()).isEqualTo(2);
        assertThat(show(0).frames().count()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"-1, 5", "95, 100", "100, 101"})
    void aRunHasNoFramesThatItsShowHasNot(long first, long last) {
        RunInfo show = show(100);
        assertThatThrownBy(() -> show.only(FrameList.of(first, last))).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 0", "10, 1, 10", "10, 2, 11", "10, 5, 12"})
    void aStepHasAMiddle(long first, long frames, long middle) {
        assertThat(new RunStep(first, frames, "a", "b").middleFrame()).isEqualTo(middle);
    }

    @Test
    void refusesStepsAndPropsThatAreNone() {
        assertThatThrownBy(() -> new RunStep(0, 0, "a", "b")).hasMessage("a: 0 frames from 0");
        assertThatThrownBy(() -> new RunStep(-1, 1, "a", "b")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PropSpan("a", -1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FramePixels.unnamed(0)).hasMessage("0 pixels");
        List<PropSpan> beyond = List.of(new PropSpan("a", 2, 2));
        assertThatThrownBy(() -> new FramePixels(3, beyond, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new FramePixels(4, beyond, Optional.empty()).props()).isEqualTo(beyond);
    }

    @Test
    void pixelsOfAMapHaveTheirPropsAndPlaces() {
        FramePixels pixels = FramePixels.of(Maps.map("prop,pixel,x,y\nbed,1,1,2\nbed,2,3,4\nlamp,1,5,6\n"));
        assertThat(pixels.count()).isEqualTo(3);
        assertThat(pixels.props()).containsExactly(new PropSpan("bed", 0, 2), new PropSpan("lamp", 2, 1));
        assertThat(pixels.places().orElseThrow().y(2)).isEqualTo(6);
    }
}
