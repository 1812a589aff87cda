package org.duskloom.cli;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.packet.PacketsKind;
import org.duskloom.engine.packet.StreamLimits;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.UniverseLayout;

/**
 * What hangs on which port, for outputs that are made for ports.
 *
 * @param wiring nothing where the pixels have no ports
 * @param isDisplay whether a display could say so; a bare map cannot
 * @param file where the pixels are described
 * @param rate of the frames that go to them
 */
record WiredPixels(Optional<PortMap> wiring, boolean isDisplay, Location file, FrameRate rate) {
    /** Those of a display, or of a map where there is none. */
    static WiredPixels of(Optional<Display> display, Location file, FrameRate rate) {
        return new WiredPixels(
                display.filter(described -> !described.ports().isEmpty())
                        .map(described -> new PortMap(described.ports(), described.map())),
                display.isPresent(),
                file,
                rate);
    }

    /** Adds an error if some kinds of output need ports and there are none, and warnings of what packets meet. */
    void look(List<OutputKind> kinds, Problems problems) {
        kinds.stream()
                .filter(OutputKind::needsPorts)
                .findFirst()
                .ifPresent(kind -> require("--as " + kind.word(), problems));
        if (kinds.stream().anyMatch(PacketsKind.class::isInstance)) {
            warnOfStreamLimits(problems);
            wiring.ifPresent(ports -> StreamLimits.warnOfSilence(rate, firstPort(ports), problems));
        }
    }

    /**
     * Adds an error if something is wanted that needs ports, and there are none.
     *
     * @param what wants them: {@code "send"}
     */
    void require(String what, Problems problems) {
        if (wiring.isEmpty()) {
            problems.error(
                    file,
                    isDisplay
                            ? "the display has no \"ports\", and " + what + " needs them"
                            : "a pixel map has no ports, and " + what + " needs them",
                    "a display says in \"ports\" which prop hangs on which data output");
        }
    }

    /** Adds warnings if the packets are more than their lines carry. */
    void warnOfStreamLimits(Problems problems) {
        wiring.ifPresent(
                ports -> StreamLimits.warn(UniverseLayout.of(ports.ports()), rate, firstPort(ports), problems));
    }

    private static Location firstPort(PortMap wiring) {
        return wiring.ports().ports().get(0).definedAt();
    }
}
