package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How large files of frames become, and what they are called. */
class FrameFileKindsTest {
    /** 3840 frames of 1288 pixels: 14,837,760 bytes; with the header that NumPy 2.4.6 writes 14,837,888. */
    @Test
    void sizesAreKnownBeforehand() {
        RunInfo run = run(1288, 3840);
        assertThat(new RgbKind().bytes(run)).isEqualTo(14_837_760);
        assertThat(new NpyKind().bytes(run)).isEqualTo(14_837_888);
    }

    /** 700 million pixels: 2^32 frames of them are 9.02e18 bytes, just below 2^63; twice as many are told. */
    @Test
    void sizesNeverTurnNegative() {
        assertThat(new RgbKind().bytes(run(700_000_000, 1L << 32))).isEqualTo(9_019_431_321_600_000_000L);
        assertThatThrownBy(() -> new RgbKind().bytes(run(700_000_000, 1L << 33)))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> new NpyKind().bytes(run(700_000_000, 1L << 33)))
                .isInstanceOf(ArithmeticException.class);
    }

    /** Only its own file is put together from those of other runs. */
    @Test
    void seamsAreOfTheirOwnFile() {
        assertThat(new RgbKind().seam("frames.rgb")).isPresent();
        assertThat(new RgbKind().seam("frames.npy")).isEmpty();
        assertThat(new NpyKind().seam("frames.npy")).isPresent();
        assertThat(new NpyKind().seam("sub/frames.npy")).isEmpty();
        Seam.Bodies npy = (Seam.Bodies) new NpyKind().seam("frames.npy").orElseThrow();
        assertThat(npy.header().apply(run(1288, 3840))).hasSize(128);
        assertThat(npy.plain()).isTrue();
        assertThat(npy.members()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, 00000000.rgb", "7, 00000007.rgb", "99999999, 99999999.rgb", "100000000, 100000000.rgb"})
    void namesOfSinglesHaveEightDigitsAtLeast(long frame, String name) {
        assertThat(SinglesSink.fileName(frame)).isEqualTo(name);
    }

    /** In the order of their names frames come in the order of their numbers, up to 100 million of them. */
    @Test
    void singlesSortAsTheyFollowEachOther() {
        List<String> names = new ArrayList<>();
        for (long frame = 0; frame < 100_000_000; frame = 3 * frame + 1) {
            names.add(SinglesSink.fileName(frame));
        }
        assertThat(names).isSorted().doesNotHaveDuplicates();
    }

    private static RunInfo run(int pixels, long frames) {
        return RunInfo.ofWhole("", FrameRate.of(40), frames, FramePixels.unnamed(pixels));
    }
}
