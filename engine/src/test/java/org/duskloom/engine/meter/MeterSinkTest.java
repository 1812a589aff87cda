package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.junit.jupiter.api.Test;

/** Meters begin late, beside the rendering, and yet before anything else is asked of them, and once. */
class MeterSinkTest {
    private static final byte[] RGB = new byte[30];

    private final List<String> calls = new ArrayList<>();

    private final MeterSink sink = new MeterSink(
            List.of(new Meter() {
                @Override
                public void begin(RunInfo run) {
                    calls.add("begin " + run.showFrames());
                }

                @Override
                public void frame(long frame, byte[] rgb, int offset) {
                    calls.add("frame " + frame);
                }

                @Override
                public void finish(FrameSource source) {
                    calls.add("finish");
                }
            }),
            null);

    @Test
    void metersBeginBeforeTheirFirstFrame() throws Exception {
        sink.begin(PoweredDisplay.run(2));
        sink.take(FrameBatch.of(0, RGB));
        sink.take(FrameBatch.of(1, RGB));
        sink.finish();
        assertThat(calls).containsExactly("begin 2", "frame 0", "frame 1", "finish");
    }

    @Test
    void metersOfARunWithoutFramesBeginToo() throws Exception {
        sink.begin(PoweredDisplay.run(5));
        sink.finish();
        assertThat(calls).containsExactly("begin 5", "finish");
    }
}
