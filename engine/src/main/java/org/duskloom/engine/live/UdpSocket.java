package org.duskloom.engine.live;

import java.io.IOException;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.StandardProtocolFamily;
import java.net.StandardSocketOptions;
import java.net.UnknownHostException;
import java.nio.ByteBuffer;
import java.nio.channels.DatagramChannel;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import org.duskloom.engine.packet.GroupAddress;

/**
 * UDP to one address, or to the multicast groups of the universes. Not connected: a connected channel would throw
 * whenever nobody listens. Not blocking: the JDK closes a blocking channel when its thread is interrupted, and then the
 * packets that end the streams could not be sent.
 */
public final class UdpSocket implements PacketSocket {
    /** A system that has no room for a packet for so long will not have it. */
    private static final long LONGEST_WAIT_NANOS = 100_000_000;

    private static final long STEP_NANOS = 50_000;

    private final DatagramChannel channel;
    private final Optional<InetSocketAddress> only;

    /** By universe, as they are needed. */
    private final InetSocketAddress[] groups = new InetSocketAddress[1 << 16];

    private UdpSocket(DatagramChannel channel, Optional<InetSocketAddress> only) throws IOException {
        channel.configureBlocking(false);
        this.channel = channel;
        this.only = only;
    }

    /**
     * To one address.
     *
     * @param from the address of this machine to send from; nothing to leave that to the system
     * @throws IOException if the socket cannot be had
     */
    public static UdpSocket to(InetSocketAddress target, Optional<InetAddress> from) throws IOException {
        boolean six = target.getAddress() instanceof Inet6Address;
        DatagramChannel channel =
                DatagramChannel.open(six ? StandardProtocolFamily.INET6 : StandardProtocolFamily.INET);
        try {
            if (from.isPresent()) {
                channel.bind(new InetSocketAddress(from.get(), 0));
            }
            return new UdpSocket(channel, Optional.of(target));
        } catch (IOException | RuntimeException refused) {
            channel.close();
            throw refused;
        }
    }

    /**
     * To the group of each universe, over a certain interface: the system would take the default route, whichever that
     * is.
     *
     * @throws IOException if the socket cannot be had
     */
    public static UdpSocket toGroups(NetworkInterface over) throws IOException {
        DatagramChannel channel = DatagramChannel.open(StandardProtocolFamily.INET);
        try {
            channel.setOption(StandardSocketOptions.IP_MULTICAST_IF, over);
            return new UdpSocket(channel, Optional.empty());
        } catch (IOException | RuntimeException refused) {
            channel.close();
            throw refused;
        }
    }

    @Override
    public void send(ByteBuffer packet, int universe) throws IOException {
        if (only.isEmpty() && groups[universe] == null) {
            groups[universe] = group(universe);
        }
        InetSocketAddress target = only.isPresent() ? only.get() : groups[universe];
        if (channel.send(packet, target) == 0) {
            sendLater(packet, target);
        }
    }

    private void sendLater(ByteBuffer packet, InetSocketAddress target) throws IOException {
        long start = System.nanoTime();
        do {
            if (System.nanoTime() - start > LONGEST_WAIT_NANOS) {
                throw new IOException("the system has no room for more packets");
            }
            LockSupport.parkNanos(STEP_NANOS);
        } while (channel.send(packet, target) == 0);
    }

    private static InetSocketAddress group(int universe) {
        try {
            InetAddress address = InetAddress.getByAddress(GroupAddress.ipv4(universe));
            return new InetSocketAddress(address, GroupAddress.UDP_PORT);
        } catch (UnknownHostException e) {
            throw new AssertionError("four bytes are an address", e);
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
