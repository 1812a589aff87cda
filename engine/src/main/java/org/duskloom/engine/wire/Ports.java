package org.duskloom.engine.wire;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The ports of a display, and what feeds them.
 *
 * @param ports in the order of the file; no two of one name, and no two with a pixel or a slot in common
 * @param supplies in the order of the file; no port is fed by two
 */
public record Ports(List<Port> ports, List<Supply> supplies) {
    /** A display that says nothing of ports. */
    public static final Ports NONE = new Ports(List.of());

    /**
     * @throws IllegalArgumentException if two have one name
     */
    public Ports {
        ports = List.copyOf(ports);
        supplies = List.copyOf(supplies);
        Set<String> names = new HashSet<>();
        for (Port port : ports) {
            if (!names.add(port.name())) {
                throw new IllegalArgumentException("two ports are called \"" + port.name() + "\"");
            }
        }
    }

    /** Ports of which nobody says what feeds them. */
    public Ports(List<Port> ports) {
        this(ports, List.of());
    }

    /** The supply that feeds a port; nothing where the display does not say. */
    public Optional<Supply> supplyOf(Port port) {
        return supplies.stream().filter(supply -> supply.feeds(port.name())).findFirst();
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return ports.isEmpty();
    }

    /** The port of that name. */
    public Optional<Port> port(String name) {
        return ports.stream().filter(port -> port.name().equals(name)).findFirst();
    }

    /** The global indices of the pixels that are on a port. */
    public BitSet pixels() {
        BitSet pixels = new BitSet();
        for (Port port : ports) {
            for (int pixel : port.pixels()) {
                if (pixel != Link.DARK) {
                    pixels.set(pixel);
                }
            }
        }
        return pixels;
    }
}
