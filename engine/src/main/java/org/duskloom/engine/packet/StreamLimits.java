package org.duskloom.engine.packet;

import java.util.List;
import java.util.Locale;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.UniverseLayout;

/**
 * Looks whether streams ask more of their lines than those carry, or less of them than receivers wait for. Everything
 * it finds is a warning.
 */
public final class StreamLimits {
    private static final double ETHERNET_BITS = 100e6;

    /** How long a receiver waits before it takes a stream for lost (ANSI E1.31-2018, Appendix A). */
    private static final ExactTime DATA_LOSS_TIMEOUT = new ExactTime(5, 2);

    private StreamLimits() {}

    /**
     * Adds a warning if the frames of a capture are so far apart that receivers take its streams for lost between them.
     * Sent in real time they are not: see {@code LiveStream}.
     *
     * @param at where the ports are written
     */
    public static void warnOfSilence(FrameRate rate, Location at, Problems problems) {
        ExactTime apart = new ExactTime(rate.denominator(), rate.numerator());
        if (apart.compareTo(DATA_LOSS_TIMEOUT) > 0) {
            problems.warn(
                    at,
                    "the packets of a universe come " + apart + " apart; E1.31 has receivers take a stream for lost"
                            + " after " + DATA_LOSS_TIMEOUT,
                    "where it is sent in real time each frame is repeated; for whoever plays the capture otherwise,"
                            + " raise the rate");
        }
    }

    /**
     * Adds a warning if frames come faster than a DMX512 line takes them, which a source should not do unless its user
     * means it (ANSI E1.31-2018, clause 6.6.1), and if all universes together are more than an Ethernet line of 100
     * Mbit/s carries.
     *
     * @param at where the ports are written
     */
    public static void warn(List<UniverseLayout> universes, FrameRate rate, Location at, Problems problems) {
        int mostSlots = NetworkLoad.mostSlots(rate);
        List<UniverseLayout> fast = universes.stream()
                .filter(universe -> universe.slotCount() > mostSlots)
                .toList();
        if (!fast.isEmpty()) {
            UniverseLayout first = fast.get(0);
            problems.warn(
                    at,
                    String.format(
                            Locale.ROOT,
                            "%s of %d slots at %s frames a second: a DMX512 line carries %d slots then, and %d slots %.1f times"
                                    + " a second at most",
                            fast.size() == 1
                                    ? "universe " + first.universe()
                                    : fast.size() + " universes, universe " + first.universe() + " for one,",
                            first.slotCount(),
                            rate,
                            mostSlots,
                            first.slotCount(),
                            Math.floor(10 * NetworkLoad.mostFramesPerSecond(first.slotCount())) / 10),
                    "receivers that drive pixels themselves may take more; a gateway to DMX512 leaves frames out");
        }
        double bits = NetworkLoad.bitsPerSecond(universes, rate);
        if (bits > ETHERNET_BITS) {
            problems.warn(
                    at,
                    String.format(
                            Locale.ROOT,
                            "%d universes at %s frames a second are %.0f Mbit/s, more than an Ethernet line of 100 Mbit/s",
                            universes.size(),
                            rate,
                            bits / 1e6),
                    "send over a gigabit line, or lower the rate");
        }
    }
}
