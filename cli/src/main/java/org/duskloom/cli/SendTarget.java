package org.duskloom.cli;

import java.io.IOException;
import java.net.Inet4Address;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.duskloom.engine.live.UdpSocket;
import org.duskloom.engine.packet.GroupAddress;

/**
 * Where packets go.
 *
 * @param address the one receiver; nothing for the multicast groups of the universes
 * @param over the interface they leave by; nothing to leave that to the system
 */
record SendTarget(Optional<InetSocketAddress> address, Optional<NetworkInterface> over) {
    /** An address, in brackets if it has colons, and a port. */
    private static final Pattern WITH_PORT =
            Pattern.compile("\\[([^\\]]+)\\](?::([0-9]{1,5}))?|([^:]+)(?::([0-9]{1,5}))?");

    private static final int HIGHEST_PORT = 65_535;

    /** One of the groups of the universes, of which all are alike here. */
    private static final InetAddress ANY_GROUP = group();

    /**
     * Looks up what the options name.
     *
     * @param to an address or a name, with or without a port; null for this machine
     * @param multicast whether packets go to the groups instead
     * @param interfaceName the interface; null where none is named
     * @throws MisuseException if one of them is not there, or they do not go together
     */
    static SendTarget of(String to, boolean multicast, String interfaceName) throws SocketException {
        if (to != null && multicast) {
            throw new MisuseException("--to names one receiver, and --multicast sends to all; choose one of them");
        }
        Optional<NetworkInterface> named =
                interfaceName == null ? Optional.empty() : Optional.of(networkInterface(interfaceName));
        if (!multicast) {
            InetSocketAddress address = address(to == null ? "127.0.0.1" : to);
            named.ifPresent(network -> sender(network, address.getAddress()));
            return new SendTarget(Optional.of(address), named);
        }
        named.ifPresent(network -> sender(network, ANY_GROUP));
        return new SendTarget(Optional.empty(), Optional.of(named.isPresent() ? named.get() : usualInterface()));
    }

    /**
     * The address of an interface from which packets go to another one.
     *
     * @param own the addresses that the interface has
     * @throws MisuseException if it has none of that kind: the system would send over another interface
     */
    static InetAddress sender(String interfaceName, List<InetAddress> own, InetAddress to) {
        boolean six = to instanceof Inet6Address;
        return own.stream()
                .filter(address -> address instanceof Inet6Address == six)
                .findFirst()
                .orElseThrow(() -> new MisuseException("--interface: " + interfaceName + " has no IPv" + (six ? 6 : 4)
                        + " address to send to "
                        + (to.isMulticastAddress() ? "multicast groups" : to.getHostAddress()) + " from; it has "
                        + (own.isEmpty() ? "none at all" : shown(own))));
    }

    private static InetAddress sender(NetworkInterface network, InetAddress to) {
        return sender(network.getName(), network.inetAddresses().toList(), to);
    }

    private static String shown(List<InetAddress> addresses) {
        return addresses.stream().map(InetAddress::getHostAddress).collect(Collectors.joining(", "));
    }

    private static InetAddress group() {
        try {
            return InetAddress.getByAddress(GroupAddress.ipv4(1));
        } catch (UnknownHostException impossible) {
            throw new AssertionError("four bytes are an address", impossible);
        }
    }

    private static InetSocketAddress address(String to) {
        Matcher parts = WITH_PORT.matcher(to);
        boolean plain = !parts.matches();
        String host = plain ? to : parts.group(1) == null ? parts.group(3) : parts.group(1);
        String port = plain ? null : parts.group(1) == null ? parts.group(4) : parts.group(2);
        int number = port == null ? GroupAddress.UDP_PORT : Integer.parseInt(port);
        if (number < 1 || number > HIGHEST_PORT) {
            throw new MisuseException("--to: there is no port " + port + "; allowed: 1 to " + HIGHEST_PORT);
        }
        return new InetSocketAddress(resolved(host), number);
    }

    private static InetAddress resolved(String host) {
        InetAddress address;
        try {
            address = InetAddress.getByName(host);
        } catch (UnknownHostException unknown) {
            throw new MisuseException("--to: nobody is known as '" + host + "'; write an address such as 192.168.1.20");
        }
        if (address.isMulticastAddress()) {
            throw new MisuseException("--to " + host
                    + " is a multicast group; --multicast sends every universe to the group that it has");
        }
        byte[] bytes = address.getAddress();
        if (address.isAnyLocalAddress() || bytes.length == 4 && (bytes[0] & bytes[1] & bytes[2] & bytes[3]) == -1) {
            throw new MisuseException("--to " + host + " is nobody's address; name that of one receiver");
        }
        return address;
    }

    private static NetworkInterface networkInterface(String name) throws SocketException {
        NetworkInterface found = NetworkInterface.getByName(name);
        if (found == null || !found.isUp()) {
            List<String> up = NetworkInterface.networkInterfaces()
                    .filter(SendTarget::isUp)
                    .map(NetworkInterface::getName)
                    .toList();
            throw new MisuseException("--interface: " + (found == null ? "there is no " : "down is ") + name
                    + "; up are: " + String.join(", ", up));
        }
        return found;
    }

    /** The first one that leads anywhere. */
    private static NetworkInterface usualInterface() throws SocketException {
        return NetworkInterface.networkInterfaces()
                .filter(SendTarget::isUp)
                .filter(SendTarget::leadsOut)
                .findFirst()
                .orElseThrow(
                        () -> new MisuseException(
                                "no network that is up takes multicast; name one with --interface, such as lo for this machine"));
    }

    private static boolean isUp(NetworkInterface network) {
        try {
            return network.isUp();
        } catch (SocketException gone) {
            return false;
        }
    }

    private static boolean leadsOut(NetworkInterface network) {
        try {
            return !network.isLoopback()
                    && network.supportsMulticast()
                    && network.inetAddresses().anyMatch(Inet4Address.class::isInstance);
        } catch (SocketException gone) {
            return false;
        }
    }

    /** Whether universes have groups to go to. */
    boolean isMulticast() {
        return address.isEmpty();
    }

    /** {@code to 127.0.0.1, UDP port 5568}, and over which interface. */
    String words() {
        String where = address.map(one -> "to " + one.getAddress().getHostAddress() + ", UDP port " + one.getPort())
                .orElse("to the multicast groups of the universes, UDP port " + GroupAddress.UDP_PORT);
        return where + over.map(network -> ", over " + network.getName()).orElse("");
    }

    /** @throws IOException if there is no socket to be had */
    UdpSocket open() throws IOException {
        if (isMulticast()) {
            return UdpSocket.toGroups(over.orElseThrow());
        }
        InetSocketAddress target = address.get();
        return UdpSocket.to(target, over.map(network -> sender(network, target.getAddress())));
    }
}
