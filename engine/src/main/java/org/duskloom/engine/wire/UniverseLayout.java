package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One universe with what the ports put into it.
 *
 * @param universe its number
 * @param slotCount how many slots of it are sent: up to the last one used, and at least {@value #FEWEST_SLOTS}
 * @param pieces what lies in it
 */
public record UniverseLayout(int universe, int slotCount, List<Piece> pieces) {
    /**
     * With fewer slots a DMX512 line has to wait: 24 of them last 1204 us, the shortest time from break to break that
     * ANSI E1.11-2008 allows.
     */
    public static final int FEWEST_SLOTS = 24;

    public UniverseLayout {
        pieces = List.copyOf(pieces);
    }

    /**
     * Bytes of a port.
     *
     * @param port the port's place in {@link Ports#ports()}
     * @param run which bytes, and where they lie
     */
    public record Piece(int port, UniverseRun run) {}

    /** All universes of the ports, in rising order. */
    public static List<UniverseLayout> of(Ports ports) {
        Map<Integer, List<Piece>> byUniverse = new TreeMap<>();
        for (int port = 0; port < ports.ports().size(); port++) {
            for (UniverseRun run : ports.ports().get(port).runs()) {
                byUniverse
                        .computeIfAbsent(run.universe(), universe -> new ArrayList<>())
                        .add(new Piece(port, run));
            }
        }
        return byUniverse.entrySet().stream()
                .map(entry -> new UniverseLayout(entry.getKey(), slots(entry.getValue()), entry.getValue()))
                .toList();
    }

    private static int slots(List<Piece> pieces) {
        int last =
                pieces.stream().mapToInt(piece -> piece.run().lastSlot()).max().orElse(0);
        return Math.max(FEWEST_SLOTS, last);
    }
}
