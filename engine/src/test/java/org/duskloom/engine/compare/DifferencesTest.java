package org.duskloom.engine.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;

/** Two props of two pixels: bytes 0 to 5 are the fence, 6 to 11 the gate. */
class DifferencesTest {
    private static final PropSpan FENCE = new PropSpan("fence", 0, 2);
    private static final PropSpan GATE = new PropSpan("gate", 2, 2);

    private static Differences between(Painted first, Painted second) throws IOException {
        Comparison comparison = Comparison.of(first.info(), second.info());
        PairedFrames pair = new PairedFrames(first, second, comparison.frames());
        Differences differences = new Differences(comparison, first.info().pixelCount());
        try (FrameReader reader = pair.reader()) {
            differences.take(FrameBatch.of(pair.info().frames(), pair.info().frameBytes(), reader));
        }
        assertThat(first.open() + second.open()).as("readers left open").isZero();
        return differences;
    }

    private static Painted even(long frames) {
        return new Painted(frames, (frame, index) -> 100, FENCE, GATE);
    }

    @Test
    void theSameDiffersInNothing() throws IOException {
        Differences none = between(even(50), even(50));
        assertThat(none.frames()).isZero();
        assertThat(none.spans()).isEmpty();
        assertThat(none.props()).isEmpty();
        assertThat(none.worst()).isEmpty();
        assertThat(none.hasMoreSpans()).isFalse();
    }

    /** Frames 3, 4 and 9; the gate's second pixel is 7 codes darker in green there, 60 in frame 4. */
    @Test
    void framesAndTheLargestDifferenceAreKept() throws IOException {
        Painted changed = new Painted(
                50,
                (frame, index) ->
                        index == 10 && (frame == 3 || frame == 4 || frame == 9) ? 100 - (frame == 4 ? 60 : 7) : 100,
                FENCE,
                GATE);
        Differences found = between(even(50), changed);
        assertThat(found.frames()).isEqualTo(3);
        assertThat(found.spans()).containsExactly(new FrameSpan(3, 5), new FrameSpan(9, 10));
        assertThat(found.props()).hasSize(1);
        PropDifference gate = found.worst().orElseThrow();
        assertThat(gate.name()).isEqualTo("gate");
        assertThat(gate.frames()).isEqualTo(3);
        assertThat(gate.firstFrame()).isEqualTo(3);
        assertThat(gate.lastFrame()).isEqualTo(9);
        assertThat(gate.pixels()).isEqualTo(1);
        assertThat(gate.largest()).isEqualTo(new PropDifference.Largest(60, 4, 2, 0x646464, 0x642864));
    }

    /** A byte is 0 to 255: from 250 to 5 are 245 codes, whichever comes first; the first of equal ones is kept. */
    @Test
    void bytesHaveNoSign() throws IOException {
        Painted bright = new Painted(4, (frame, index) -> 250, FENCE, GATE);
        Painted dark = new Painted(4, (frame, index) -> 5, FENCE, GATE);
        PropDifference.Largest expected = new PropDifference.Largest(245, 0, 1, 0xFAFAFA, 0x050505);
        assertThat(between(bright, dark).worst().orElseThrow().largest()).isEqualTo(expected);
        Differences other = between(dark, bright);
        assertThat(other.worst().orElseThrow().largest().codes()).isEqualTo(245);
        assertThat(other.worst().orElseThrow().name()).isEqualTo("fence");
        assertThat(other.props()).extracting(PropDifference::pixels).containsExactly(2, 2);
        assertThat(other.spans()).containsExactly(new FrameSpan(0, 4));
    }

    /** The gate stands first in the second rendering: what belongs together is compared. */
    @Test
    void pixelsAreThoseOfTheSameProp() throws IOException {
        Painted first = new Painted(2, (frame, index) -> index, FENCE, GATE);
        Painted second = new Painted(
                2, (frame, index) -> (index + 6) % 12, new PropSpan("gate", 0, 2), new PropSpan("fence", 2, 2));
        assertThat(between(first, second).frames()).isZero();
    }

    /** Every second frame differs: each is a span of its own, and only so many are kept. */
    @Test
    void spansAreKeptUpToALimitAndFramesCountedBeyond() throws IOException {
        long frames = 2L * Differences.MOST_SPANS;
        Painted blinking = new Painted(frames, (frame, index) -> frame % 2 == 0 ? 101 : 100, FENCE, GATE);
        Differences all = between(even(frames), blinking);
        assertThat(all.spans()).hasSize(Differences.MOST_SPANS);
        assertThat(all.hasMoreSpans()).isFalse();
        Painted longer = new Painted(frames + 4, (frame, index) -> frame % 2 == 0 ? 101 : 100, FENCE, GATE);
        Differences more = between(even(frames + 4), longer);
        assertThat(more.spans()).hasSize(Differences.MOST_SPANS);
        assertThat(more.hasMoreSpans()).isTrue();
        assertThat(more.frames()).isEqualTo(Differences.MOST_SPANS + 2);
    }
}
