package org.duskloom.engine.packet;

import java.util.Optional;
import java.util.function.Supplier;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.Seam;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.UniverseLayout;

/** {@code packets.pcap}: the show as E1.31 packets in a capture file, at the times at which they are to be sent. */
public final class PacketsKind implements StreamKind {
    /** The name of its file. */
    public static final String FILE = "packets.pcap";

    /** How many packets of a universe end its stream: ANSI E1.31-2018, clause 6.2.6. */
    public static final int PACKETS_AT_END = 3;

    private final Supplier<PortMap> wiring;
    private final Supplier<StreamSource> source;

    /**
     * The kind for one display.
     *
     * @param wiring what hangs where; asked for when a file is begun
     * @param source who sends
     */
    public PacketsKind(Supplier<PortMap> wiring, Supplier<StreamSource> source) {
        this.wiring = wiring;
        this.source = source;
    }

    @Override
    public String word() {
        return "packets";
    }

    @Override
    public String help() {
        return "the whole show as E1.31 packets, for players of captures";
    }

    @Override
    public String file() {
        return FILE;
    }

    @Override
    public boolean needsPorts() {
        return true;
    }

    @Override
    public long bytes(RunInfo run) {
        long perFrame = UniverseLayout.of(wiring.get().ports()).stream()
                .mapToLong(universe -> Capture.HEADER_BYTES + DataPacket.SLOTS_AT + universe.slotCount())
                .sum();
        long frames = run.frames().count() + (PacketsSink.endsShow(run) ? PACKETS_AT_END : 0);
        return Math.addExact(Capture.FILE_HEADER_BYTES, Math.multiplyExact(perFrame, frames));
    }

    /** Stamps and sequence numbers are those of the frames, so packets of pieces follow each other as they are. */
    @Override
    public Optional<Seam> seam(String name) {
        return name.equals(FILE) ? Optional.of(new Seam.Bodies(run -> Capture.fileHeader(), false)) : Optional.empty();
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new PacketsSink(file, wiring.get(), source.get());
    }
}
