package org.duskloom.engine.meter;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;

/** Shows the frames of a run to meters, a few at a time while they are near. */
public final class MeterSink implements FrameSink {
    private final List<Meter> meters;
    private final FrameSource source;

    /** The run, until the meters have begun with it. */
    private Optional<RunInfo> begun = Optional.empty();

    /**
     * A sink for these meters.
     *
     * @param source where the frames of the run come from
     */
    public MeterSink(List<? extends Meter> meters, FrameSource source) {
        this.meters = List.copyOf(meters);
        this.source = source;
    }

    /** Meters begin with the first frames: their tables are made beside the rendering and not before it. */
    @Override
    public void begin(RunInfo run) {
        begun = Optional.of(run);
    }

    private void beginMeters() {
        begun.ifPresent(run -> meters.forEach(meter -> meter.begin(run)));
        begun = Optional.empty();
    }

    @Override
    public void take(FrameBatch frames) {
        beginMeters();
        for (int i = 0; i < meters.size(); i++) {
            meters.get(i).take(frames);
        }
    }

    /** Here and not where figures are asked for, since other sinks may take their time to finish, too. */
    @Override
    public void finish() throws IOException {
        beginMeters();
        for (Meter meter : meters) {
            meter.finish(source);
        }
    }
}
