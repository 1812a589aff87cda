package org.duskloom.engine.wire;

import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.FrameRate;

/** Looks for what is allowed of ports, but mostly is a slip. Everything it finds is a warning. */
public final class PortChecks {
    private static final int MAX_SHOWN = 5;

    private PortChecks() {}

    /** Adds a warning if there are ports, but pixels on none of them, which stay dark. */
    public static void warnOfLoosePixels(Ports ports, PixelMap map, Problems problems) {
        BitSet wired = ports.pixels();
        List<Prop> loose =
                map.props().stream().filter(prop -> looseCount(prop, wired) > 0).toList();
        if (ports.isEmpty() || loose.isEmpty()) {
            return;
        }
        List<String> shown = loose.stream()
                .limit(MAX_SHOWN)
                .map(prop -> Quoted.of(prop.name()) + " (" + looseCount(prop, wired) + " of " + prop.pixelCount() + ")")
                .toList();
        int more = loose.size() - shown.size();
        problems.warn(
                loose.get(0).definedAt(),
                "pixels on no port: " + String.join(", ", shown) + (more > 0 ? " and of " + more + " more props" : ""),
                "they stay dark; put them into a \"chain\"");
    }

    private static int looseCount(Prop prop, BitSet wired) {
        int end = prop.firstPixel() + prop.pixelCount();
        return prop.pixelCount() - wired.get(prop.firstPixel(), end).cardinality();
    }

    /** Adds a warning for each port whose line is too long for a rate. */
    public static void warnOfLongLines(Ports ports, FrameRate rate, Problems problems) {
        for (Port port : ports.ports()) {
            DataLine line = port.pixelKind().line();
            int bits = port.signal().bitsPerPixel();
            long most = line.mostPixels(rate, bits);
            if (port.pixelCount() > most) {
                double possible = line.mostFramesPerSecond(port.pixelCount(), bits);
                problems.warn(
                        port.definedAt(),
                        String.format(
                                Locale.ROOT,
                                "port %s has %d pixels, and a data line of %.0f kbit/s carries %d at %s frames a second",
                                Quoted.of(port.name()),
                                port.pixelCount(),
                                line.kilobits(),
                                most,
                                rate),
                        String.format(
                                Locale.ROOT,
                                "%d pixels take %.1f frames a second at most; share them among ports, or lower the rate",
                                port.pixelCount(),
                                Math.floor(10 * possible) / 10));
            }
        }
    }
}
