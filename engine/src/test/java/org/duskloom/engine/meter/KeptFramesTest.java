package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;

/** A meter that looks at frames once more after the run, of shows of two pixels whose codes tell the frame. */
class KeptFramesTest {
    private static final FramePixels PIXELS = FramePixels.unnamed(2);

    /** The frames that were had from the source, in order. */
    private final List<Long> had = new ArrayList<>();

    private FrameSource source(long frames, FramePixels pixels) {
        RunInfo info = RunInfo.ofWhole("codes", FrameRate.of(40), frames, pixels);
        return new FrameSource() {
            @Override
            public RunInfo info() {
                return info;
            }

            @Override
            public FrameReader reader() {
                return (frame, rgb, offset) -> {
                    had.add(frame);
                    for (int i = 0; i < info.frameBytes(); i++) {
                        rgb[offset + i] = code(frame, i);
                    }
                };
            }
        };
    }

    private static byte code(long frame, int place) {
        return (byte) (31 * frame + place);
    }

    /** Looks at the first three frames again, the last of them first. */
    private static void run(FrameSource source, FrameList frames) throws IOException, InterruptedException {
        KeptFrames kept = new KeptFrames(source);
        Meter again = new Meter() {
            @Override
            public void frame(long frame, byte[] rgb, int offset) {}

            @Override
            public void finish(FrameSource ofRun) throws IOException {
                assertThat(ofRun.info()).isEqualTo(source.info());
                byte[] rgb = new byte[1 + source.info().frameBytes()];
                try (FrameReader reader = ofRun.reader()) {
                    for (long frame = 2; frame >= 0; frame--) {
                        reader.read(frame, rgb, 1);
                        assertThat(rgb[1]).isEqualTo(code(frame, 0));
                        assertThat(rgb[6]).isEqualTo(code(frame, 5));
                    }
                }
            }
        };
        new FrameRun(source, frames, 1).into(new MeterSink(List.of(kept, again), kept), Progress.SILENT);
    }

    @Test
    void hasFramesOnceThatFit() throws IOException, InterruptedException {
        FrameSource source = source(5, PIXELS);
        run(source, source.info().frames());
        assertThat(had).containsExactly(0L, 1L, 2L, 3L, 4L);
    }

    @Test
    void hasFramesAnewOfAPieceOfAShow() throws IOException, InterruptedException {
        run(source(5, PIXELS), FrameList.of(new FrameSpan(0, 4)));
        assertThat(had).containsExactly(0L, 1L, 2L, 3L, 2L, 1L, 0L);
    }

    /** Four frames of 4,194,303 bytes fit into 16 MiB, and of one pixel more they do not. */
    @Test
    void hasFramesAnewThatAreTooLarge() throws IOException, InterruptedException {
        FrameSource fitting = source(4, FramePixels.unnamed(1_398_101));
        run(fitting, fitting.info().frames());
        assertThat(had).hasSize(4);
        had.clear();
        FrameSource large = source(4, FramePixels.unnamed(1_398_102));
        run(large, large.info().frames());
        assertThat(had).hasSize(7);
    }
}
