package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.meter.PowerFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.wire.Curve;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.Signal;

/**
 * Which {@code cap} keeps a supply within its share. What flows in the dark stays; the rest of each port that it feeds
 * is lowered by the same factor, so that all of them stay as bright beside each other as they are.
 *
 * @param supply what is looked at
 * @param ports what each of its ports is to be capped at; none where it keeps within its share, or cannot
 * @param possible whether it can be kept within its share: not where what flows in the dark is more than that
 */
public record CapAdvice(SupplyFigures supply, List<PortCap> ports, boolean possible) {
    private static final int STEPS_OF_LIGHT = 1024;
    private static final int HALVINGS = 40;

    public CapAdvice {
        ports = List.copyOf(ports);
    }

    /**
     * A port.
     *
     * @param port which
     * @param cap what to write for it, rounded down to hundredths
     */
    public record PortCap(Port port, double cap) {}

    /** Whether nothing is to be done. */
    public boolean isKept() {
        return supply.marginAmps() >= 0;
    }

    /** For every supply; of everything on, what keeps white at full within the share. */
    public static List<CapAdvice> of(Report report) {
        return report.power().supplies().stream()
                .map(supply -> of(supply, report.power(), report.subject().everythingOn()))
                .toList();
    }

    private static CapAdvice of(SupplyFigures supply, PowerFigures power, boolean everythingOn) {
        double allowed = supply.supply().allowedAmps() - supply.idleAmps();
        double drawn = supply.amps().peak() - supply.idleAmps();
        if (supply.marginAmps() >= 0 || allowed <= 0) {
            return new CapAdvice(supply, List.of(), allowed > 0);
        }
        List<PortCap> caps = new ArrayList<>();
        power.ports().stream()
                .filter(port -> supply.supply().feeds(port.port().name()))
                .forEach(port -> caps.add(new PortCap(
                        port.port(),
                        cap(port.port().signal(), everythingOn ? 1 : portCap(port.port()), allowed / drawn))));
        return new CapAdvice(supply, caps, true);
    }

    private static double portCap(Port port) {
        return port.signal().brightness().cap();
    }

    private static double cap(Signal signal, double cap, double share) {
        double factor = signal.curve() instanceof Curve.Gamma ? factor(signal.curve(), cap, share) : share;
        return Math.floor(100 * cap * factor + 1e-9) / 100;
    }

    /** The largest factor of light with which no light is on for more than a share of the time it was. */
    private static double factor(Curve curve, double cap, double share) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (keeps(curve, cap, middle, share)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static boolean keeps(Curve curve, double cap, double factor, double share) {
        for (int i = 1; i <= STEPS_OF_LIGHT; i++) {
            double light = cap * i / STEPS_OF_LIGHT;
            if (curve.sent(factor * light) > share * curve.sent(light)) {
                return false;
            }
        }
        return true;
    }
}
