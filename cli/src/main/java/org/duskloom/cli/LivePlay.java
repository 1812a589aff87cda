package org.duskloom.cli;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.live.LiveSink;
import org.duskloom.engine.live.LiveStream;
import org.duskloom.engine.live.LoopedFrames;
import org.duskloom.engine.packet.CapturedShow;
import org.duskloom.engine.packet.DataPacket;
import org.duskloom.engine.packet.PacketStream;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.wire.PortFrames;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.UniverseLayout;

/** What is sent: a show that is rendered while it is sent, or a capture of one. */
interface LivePlay extends Closeable {
    /** What it is made of. */
    RunInfo info();

    /** The packets that it fills, one for each universe. */
    List<DataPacket> packets();

    /**
     * Sends everything, in real time.
     *
     * @param firstFrame the first one, from 0
     * @param times how often the last one comes
     */
    void play(LiveStream stream, long firstFrame, long times, Streams streams) throws IOException, InterruptedException;

    @Override
    default void close() throws IOException {}

    /** Renders as it sends. */
    final class OfShow implements LivePlay {
        private final FrameSource frames;
        private final PacketStream packets;

        OfShow(LoadedShow show, PortMap wiring, StreamSource source) {
            this.frames = show.frames();
            this.packets = new PacketStream(PortFrames.encoders(wiring), UniverseLayout.of(wiring.ports()), source, 0);
        }

        @Override
        public RunInfo info() {
            return frames.info();
        }

        @Override
        public List<DataPacket> packets() {
            return packets.packets();
        }

        @Override
        public void play(LiveStream stream, long firstFrame, long times, Streams streams)
                throws IOException, InterruptedException {
            LoopedFrames looped = new LoopedFrames(frames, firstFrame, times);
            new Rendering(looped, looped.frames()).into(List.of(new LiveSink(packets, stream, looped)), streams);
        }
    }

    /** Sends what was rendered before. */
    final class OfCapture implements LivePlay {
        private final CapturedShow show;
        private final RunInfo info;
        private final List<DataPacket> packets;

        OfCapture(CapturedShow show, RunInfo info, StreamSource source) {
            this.show = show;
            this.info = info;
            this.packets = show.packets(source);
        }

        @Override
        public RunInfo info() {
            return info;
        }

        @Override
        public List<DataPacket> packets() {
            return packets;
        }

        @Override
        public void play(LiveStream stream, long firstFrame, long times, Streams streams)
                throws IOException, InterruptedException {
            long count = info.frames().count();
            for (long index = firstFrame; index < count * times; index++) {
                if (stream.wants(index - firstFrame)) {
                    show.read(index % count, packets);
                    stream.send(index - firstFrame);
                }
            }
        }

        @Override
        public void close() throws IOException {
            show.close();
        }
    }
}
