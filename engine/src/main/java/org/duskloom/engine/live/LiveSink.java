package org.duskloom.engine.live;

import java.io.IOException;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.packet.PacketStream;

/**
 * Sends frames as they come, each when it is due; waiting holds the rendering back. Frame numbers may go on beyond the
 * show, which then begins again. Closing ends the streams.
 */
public final class LiveSink implements FrameSink {
    private final PacketStream packets;
    private final LiveStream stream;
    private final LoopedFrames loop;
    private long firstFrame;

    /**
     * A sink of one run.
     *
     * @param packets filled from frames
     * @param stream sends these packets
     * @param loop knows which frame of the show a frame of the run is
     */
    public LiveSink(PacketStream packets, LiveStream stream, LoopedFrames loop) {
        this.packets = packets;
        this.stream = stream;
        this.loop = loop;
    }

    @Override
    public void begin(RunInfo run) {
        firstFrame = run.frames().first();
    }

    @Override
    public void take(FrameBatch frames) throws IOException {
        for (int i = 0; i < frames.count(); i++) {
            long frame = frames.frame(i);
            if (stream.wants(frame - firstFrame)) {
                packets.fill(loop.frameOfShow(frame), frames.rgb(), frames.offset(i));
                stream.send(frame - firstFrame);
            }
        }
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
