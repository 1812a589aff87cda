package org.duskloom.engine.live;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.packet.Capture;
import org.duskloom.engine.packet.DataPacket;
import org.duskloom.engine.packet.PacketStream;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Packing;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PortFrames;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.Ports;
import org.duskloom.engine.wire.Signal;
import org.duskloom.engine.wire.UniverseLayout;
import org.junit.jupiter.api.Test;

/** Encoding, packing, sealing and sending a frame cost no memory. */
class StreamAllocationTest {
    private static final int PIXELS = 2000;
    private static final int FRAMES = 400;

    private static final LiveClock CLOCK = new LiveClock() {
        private long now;

        @Override
        public long nanos() {
            return now;
        }

        @Override
        public boolean await(long nanos) {
            now = Math.max(now, nanos);
            return true;
        }
    };

    private static PortMap ports() {
        Positions places = new Positions(new double[PIXELS], new double[PIXELS], new double[PIXELS]);
        Location place = Location.ofFile("display.json");
        PixelMap map = new PixelMap(List.of(new Prop("fence", 0, PIXELS, List.of(), place)), places, places);
        Link link = new Link("fence", 0, IntStream.range(0, PIXELS).toArray(), place);
        Port port = new Port("left", List.of(link), Signal.USUAL, new Packing(1, 1, true), place);
        return new PortMap(new Ports(List.of(port)), map);
    }

    @Test
    void allocatesNothingPerFrame() throws IOException {
        PortMap ports = ports();
        StreamSource source = new StreamSource(new UUID(1, 2), "garden", 100, 9);
        PacketStream packets = new PacketStream(
                PortFrames.encoders(ports), UniverseLayout.of(ports.ports()), source, Capture.HEADER_BYTES);
        LiveStream stream = new LiveStream(
                packets.packets(),
                source,
                (packet, universe) -> packet.get(packet.position()),
                CLOCK,
                FrameRate.of(40));
        byte[] rgb = new byte[3 * PIXELS];
        long last = Long.MAX_VALUE;
        // The JVM may still be loading code in the first rounds.
        for (int round = 0; round < 5 && last > 0; round++) {
            last = allocatedBy(packets, stream, rgb, round * FRAMES);
        }
        assertThat(last).isZero();
        assertThat(stream.pacing().frames()).isGreaterThanOrEqualTo(FRAMES);
    }

    private static long allocatedBy(PacketStream packets, LiveStream stream, byte[] rgb, int firstFrame)
            throws IOException {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        List<DataPacket> all = packets.packets();
        FrameRate rate = FrameRate.of(40);
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int frame = firstFrame; frame < firstFrame + FRAMES; frame++) {
            if (stream.wants(frame)) {
                rgb[frame % rgb.length]++;
                packets.fill(frame, rgb, 0);
                for (int i = 0; i < all.size(); i++) {
                    Capture.seal(all.get(i), rate, frame);
                }
                stream.send(frame);
            }
        }
        return threads.getCurrentThreadAllocatedBytes() - before;
    }
}
