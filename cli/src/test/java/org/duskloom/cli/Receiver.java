package org.duskloom.cli;

import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.SocketTimeoutException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;

/**
 * Receives UDP packets on this machine, on a thread of its own, until enough have come that end a stream or twenty
 * seconds pass without one. Knows the fields by their octets in ANSI E1.31-2018 and nothing of the sender's code.
 */
final class Receiver extends Thread {
    private final DatagramSocket socket;
    private final int ends;
    private final List<byte[]> packets = new ArrayList<>();
    private final CountDownLatch begun = new CountDownLatch(1);
    private final int port;

    /** @param universes how many streams will end, each with three packets */
    Receiver(int universes) throws IOException {
        this(new DatagramSocket(0, InetAddress.getLoopbackAddress()), universes);
    }

    Receiver(DatagramSocket socket, int universes) throws IOException {
        this.socket = socket;
        this.ends = 3 * universes;
        this.port = socket.getLocalPort();
        socket.setReceiveBufferSize(4 << 20);
        socket.setSoTimeout(20_000);
        setDaemon(true);
        start();
    }

    String address() {
        return "127.0.0.1:" + port;
    }

    @Override
    public void run() {
        byte[] buffer = new byte[2000];
        int ended = 0;
        try (socket) {
            while (ended < ends) {
                DatagramPacket packet = new DatagramPacket(buffer, buffer.length);
                socket.receive(packet);
                byte[] bytes = Arrays.copyOf(buffer, packet.getLength());
                packets.add(bytes);
                begun.countDown();
                ended += bytes.length > 126 && (bytes[112] & 0x40) != 0 ? 1 : 0;
            }
        } catch (SocketTimeoutException quiet) {
            // What came until now is what there is.
            return;
        } catch (IOException fault) {
            throw new AssertionError(fault);
        }
    }

    /** Waits for the first packet. */
    void awaitBegun() throws InterruptedException {
        begun.await();
    }

    /** All that came, in order. */
    List<byte[]> all() throws InterruptedException {
        join();
        return packets;
    }

    /** The data packets of a universe that are not those at its end. */
    List<byte[]> ofUniverse(int universe) throws InterruptedException {
        return all().stream()
                .filter(packet -> packet.length > 126 && packet[21] == 4)
                .filter(packet -> ((packet[113] & 0xFF) << 8 | packet[114] & 0xFF) == universe)
                .filter(packet -> (packet[112] & 0x40) == 0)
                .toList();
    }
}
