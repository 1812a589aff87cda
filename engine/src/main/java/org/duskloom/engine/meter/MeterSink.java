package org.duskloom.engine.meter;

import java.util.List;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;

/** Shows each frame of a run to meters, one after the other while it is near. */
public final class MeterSink implements FrameSink {
    private final List<Meter> meters;

    /** A sink for these meters. */
    public MeterSink(List<? extends Meter> meters) {
        this.meters = List.copyOf(meters);
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
}
