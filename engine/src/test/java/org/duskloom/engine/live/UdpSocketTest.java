package org.duskloom.engine.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class UdpSocketTest {
    private static final int PATIENCE_MILLIS = 5000;

    /** Ctrl-C may come in the midst of a frame's packets; those that end the streams are still to be sent after it. */
    @Test
    void sendsForAThreadThatIsInterrupted() throws IOException {
        InetAddress here = InetAddress.getLoopbackAddress();
        try (DatagramSocket receiver = new DatagramSocket(0, here);
                UdpSocket socket =
                        UdpSocket.to(new InetSocketAddress(here, receiver.getLocalPort()), Optional.empty())) {
            receiver.setSoTimeout(PATIENCE_MILLIS);
            Thread.currentThread().interrupt();
            try {
                socket.send(ByteBuffer.wrap(new byte[] {1}), 1);
            } finally {
                assertThat(Thread.interrupted()).isTrue();
            }
            socket.send(ByteBuffer.wrap(new byte[] {2}), 1);
            assertThat(received(receiver)).isEqualTo(1);
            assertThat(received(receiver)).isEqualTo(2);
        }
    }

    private static int received(DatagramSocket receiver) throws IOException {
        DatagramPacket packet = new DatagramPacket(new byte[8], 8);
        receiver.receive(packet);
        return packet.getData()[0];
    }
}
