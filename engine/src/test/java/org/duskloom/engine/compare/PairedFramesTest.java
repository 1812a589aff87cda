package org.duskloom.engine.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;

class PairedFramesTest {
    private static final FrameSpan SPAN = new FrameSpan(4, 9);

    private final Painted one = new Painted(20, (frame, index) -> (int) (10 * frame + index), new PropSpan("a", 0, 1));
    private final Painted two = new Painted(20, (frame, index) -> 200 + index, new PropSpan("b", 0, 2));

    /** Nothing before and nothing behind its own bytes is written. */
    @Test
    void putsTheSecondBehindTheFirst() throws IOException {
        byte[] rgb = new byte[1 + 9 + 1];
        try (FrameReader reader = new PairedFrames(one, two, SPAN).reader()) {
            reader.read(5, rgb, 1);
        }
        assertThat(rgb).containsExactly(0, 50, 51, 52, 200, 201, 202, 203, 204, 205, 0);
        assertThat(one.open() + two.open()).isZero();
    }

    @Test
    void hasThePixelsOfBothAndTheFramesAskedFor() {
        RunInfo info = new PairedFrames(one, two, SPAN).info();
        assertThat(info.pixelCount()).isEqualTo(3);
        assertThat(info.frameBytes()).isEqualTo(9);
        assertThat(info.frames()).hasToString("frames 4..9");
        assertThat(info.rate()).isEqualTo(one.info().rate());
    }

    /** A disk that is gone: the other file is closed nevertheless, and the fault told. */
    @Test
    void closesBothIfTheFirstCannotBeClosed() throws IOException {
        FrameSource gone = new FrameSource() {
            @Override
            public RunInfo info() {
                return one.info();
            }

            @Override
            public FrameReader reader() {
                return new FrameReader() {
                    @Override
                    public void read(long frame, byte[] rgb, int offset) throws IOException {
                        throw new IOException("cannot be read");
                    }

                    @Override
                    public void close() throws IOException {
                        throw new IOException("cannot be closed");
                    }
                };
            }
        };
        FrameReader reader = new PairedFrames(gone, two, SPAN).reader();
        assertThatThrownBy(() -> reader.read(4, new byte[9], 0)).hasMessage("cannot be read");
        assertThat(two.open()).isEqualTo(1);
        assertThatThrownBy(reader::close).isInstanceOf(IOException.class).hasMessage("cannot be closed");
        assertThat(two.open()).isZero();
    }
}
