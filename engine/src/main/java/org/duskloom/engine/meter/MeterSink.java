package org.duskloom.engine.meter;

import java.io.IOException;
import java.util.List;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;

/** Shows each frame of a run to meters, one after the other while it is near. */
public final class MeterSink implements FrameSink {
    private final List<Meter> meters;
    private final FrameSource source;

    /**
     * A sink for these meters.
     *
     * @param source where the frames of the run come from
     */
    public MeterSink(List<? extends Meter> meters, FrameSource source) {
        this.meters = List.copyOf(meters);
        this.source = source;
    }

    @Override
    public void begin(RunInfo run) {
        meters.forEach(meter -> meter.begin(run));
    }

    @Override
    public void take(FrameBatch frames) {
        for (int i = 0; i < frames.count(); i++) {
            for (int m = 0; m < meters.size(); m++) {
                meters.get(m).frame(frames.frame(i), frames.rgb(), frames.offset(i));
            }
        }
    }

    /** Here and not where figures are asked for, since other sinks may take their time to finish, too. */
    @Override
    public void finish() throws IOException {
        for (Meter meter : meters) {
            meter.finish(source);
        }
    }
}
