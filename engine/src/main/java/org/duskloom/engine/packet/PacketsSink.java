package org.duskloom.engine.packet;

import java.io.IOException;
import java.util.List;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.RecordedSink;
import org.duskloom.engine.format.WrittenFile;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.EncodingSink;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameEncoder;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.PortEncoder;
import org.duskloom.engine.wire.PortFrames;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.UniverseLayout;

/**
 * Writes packets into a capture file. The sequence number of a packet is the frame's, and the streams end where the
 * show ends, so that captures of its pieces follow each other without a seam.
 */
final class PacketsSink implements RecordedSink, EncodingSink {
    private final StagedFile file;
    private final StreamSource source;
    private final List<PortEncoder> encoders;
    private final List<UniverseLayout> universes;
    private RunInfo run;

    PacketsSink(StagedFile file, PortMap wiring, StreamSource source) {
        this.file = file;
        this.source = source;
        this.encoders = PortFrames.encoders(wiring);
        this.universes = UniverseLayout.of(wiring.ports());
    }

    /** Whether the last frame of a run is the last of its show. */
    static boolean endsShow(RunInfo run) {
        return run.frames().count() > 0 && run.frames().last() == run.showFrames() - 1;
    }

    @Override
    public void begin(RunInfo info) throws IOException {
        run = info;
        byte[] header = Capture.fileHeader();
        file.write(header, 0, header.length);
    }

    @Override
    public FrameEncoder encoder() {
        PacketStream stream = new PacketStream(encoders, universes, source, Capture.HEADER_BYTES);
        stream.packets().forEach(Capture::address);
        FrameRate rate = run.rate();
        return (frames, into) -> encode(frames, into, stream, rate);
    }

    private static void encode(FrameBatch frames, EncodedBytes into, PacketStream stream, FrameRate rate) {
        List<DataPacket> packets = stream.packets();
        for (int i = 0; i < frames.count(); i++) {
            long frame = frames.frame(i);
            stream.fill(frame, frames.rgb(), frames.offset(i));
            for (int k = 0; k < packets.size(); k++) {
                DataPacket packet = packets.get(k);
                packet.sequence(frame);
                Capture.seal(packet, rate, frame);
                into.put(packet.bytes(), 0, packet.bytes().length);
            }
        }
    }

    @Override
    public void take(FrameBatch frames, EncodedBytes encoded) throws IOException {
        file.write(encoded.array(), 0, encoded.length());
    }

    @Override
    public void finish() throws IOException {
        if (endsShow(run)) {
            end(run.frames().last() + 1);
        }
        file.finish();
    }

    private void end(long firstFrame) throws IOException {
        List<DataPacket> packets = PacketStream.packets(universes, source, Capture.HEADER_BYTES);
        for (long frame = firstFrame; frame < firstFrame + PacketsKind.PACKETS_AT_END; frame++) {
            for (DataPacket packet : packets) {
                Capture.address(packet);
                packet.terminate();
                packet.sequence(frame);
                Capture.seal(packet, run.rate(), frame);
                file.write(packet.bytes(), 0, packet.bytes().length);
            }
        }
    }

    @Override
    public void close() {
        file.close();
    }

    @Override
    public List<WrittenFile> written() {
        return List.of(new WrittenFile(PacketsKind.FILE, file.bytesTaken()));
    }
}
