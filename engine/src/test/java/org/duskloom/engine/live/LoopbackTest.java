package org.duskloom.engine.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketTimeoutException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.duskloom.engine.packet.DataPacket;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Real packets over the loopback interface, to a receiver that knows nothing of the sender. */
@Timeout(60)
class LoopbackTest {
    private static final int UNIVERSES = 4;
    private static final int FRAMES = 80;

    /** Reads all packets on a thread of its own until two seconds pass without one. */
    private static final class Receiver extends Thread {
        private final DatagramSocket socket;
        private final List<byte[]> packets = Collections.synchronizedList(new ArrayList<>());

        Receiver() throws IOException {
            socket = new DatagramSocket(0, InetAddress.getLoopbackAddress());
            socket.setReceiveBufferSize(1 << 20);
            socket.setSoTimeout(2000);
        }

        @Override
        public void run() {
            byte[] buffer = new byte[2000];
            while (true) {
                DatagramPacket packet = new DatagramPacket(buffer, buffer.length);
                try {
                    socket.receive(packet);
                } catch (SocketTimeoutException quiet) {
                    socket.close();
                    return;
                } catch (IOException fault) {
                    throw new AssertionError(fault);
                }
                packets.add(Arrays.copyOf(buffer, packet.getLength()));
            }
        }
    }

    @Test
    void everyFrameArrivesInOrderAndTheStreamsEnd() throws IOException, InterruptedException {
        Receiver receiver = new Receiver();
        receiver.start();
        StreamSource source = new StreamSource(new UUID(1, 2), "garden", 100, 0);
        List<DataPacket> packets = IntStream.rangeClosed(1, UNIVERSES)
                .mapToObj(universe -> new DataPacket(source, universe, 510, 0))
                .toList();
        InetSocketAddress target =
                new InetSocketAddress(InetAddress.getLoopbackAddress(), receiver.socket.getLocalPort());
        FrameRate rate = FrameRate.of(40);
        long began;
        long ended;
        LiveStream stream;
        try (UdpSocket socket = UdpSocket.to(target, Optional.empty())) {
            stream = new LiveStream(packets, source, socket, LiveClock.SYSTEM, rate);
            began = System.nanoTime();
            for (int frame = 0; frame < FRAMES; frame++) {
                if (stream.wants(frame)) {
                    for (DataPacket packet : packets) {
                        packet.bytes()[packet.firstSlotAt()] = (byte) frame;
                    }
                    stream.send(frame);
                }
            }
            ended = System.nanoTime();
            stream.close();
        }
        receiver.join();
        Pacing pacing = stream.pacing();
        System.out.printf(
                "loopback: %d of %d frames, pacing error median %d us, worst %d us, late %d%n",
                pacing.frames(), FRAMES, pacing.medianNanos() / 1000, pacing.worstNanos() / 1000, pacing.lateFrames());
        assertThat(pacing.frames() + pacing.skippedFrames()).isEqualTo(FRAMES);
        assertThat(receiver.packets).hasSize((int) ((pacing.frames() + 6) * UNIVERSES));
        check(receiver.packets, pacing.frames());
        // A machine under load may be late; it must never be early.
        assertThat(ended - began).isGreaterThanOrEqualTo((FRAMES - 1) * 25_000_000L);
    }

    private static void check(List<byte[]> packets, long frames) {
        for (int universe = 1; universe <= UNIVERSES; universe++) {
            int wanted = universe;
            List<byte[]> own = packets.stream()
                    .filter(packet -> (packet[113] << 8 | packet[114]) == wanted)
                    .toList();
            for (int i = 0; i < own.size(); i++) {
                assertThat(own.get(i)).hasSize(126 + 510);
                assertThat(own.get(i)[111]).isEqualTo((byte) i);
                assertThat(own.get(i)[112]).isEqualTo((byte) (i < frames + 3 ? 0 : 0x40));
                byte light = own.get(i)[126];
                if (i < frames) {
                    assertThat(light).isGreaterThanOrEqualTo(i == 0 ? (byte) 0 : own.get(i - 1)[126]);
                } else {
                    assertThat(light)
                            .as("the dark frames, and what ends the streams")
                            .isZero();
                }
            }
        }
    }
}
