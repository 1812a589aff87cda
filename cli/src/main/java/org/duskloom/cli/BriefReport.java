package org.duskloom.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.meter.VoltFigures;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.FlashRule;
import org.duskloom.engine.report.Caution;
import org.duskloom.engine.report.Concern;
import org.duskloom.engine.report.DataFigures;
import org.duskloom.engine.report.PortTiming;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/** A report in some lines, for the end of a rendering. */
final class BriefReport {
    private BriefReport() {}

    /** @param flashes nothing where light was not looked at */
    static List<String> lines(Report report, Optional<FlashFigures> flashes) {
        String flashing = flashes.map(found -> flashing(report, found))
                .orElse("flashing: not looked at with so many pixels; 'duskloom report' does");
        return report.power().ports().isEmpty()
                ? List.of(flashing)
                : List.of(power(report), data(report), flashing, "caution: " + Caution.SHORT);
    }

    private static String flashing(Report report, FlashFigures flashes) {
        FlashCount worst = flashes.worst();
        String most = Counted.of(worst.most(), "change") + " of " + (worst.rule() == FlashRule.RED ? "red" : "light")
                + " in the second from " + Figure.moment(report, worst.firstFrame());
        if (flashes.passes()) {
            return "flashing: " + (worst.most() == 0 ? "none" : "at most " + most) + "; no guarantee for anyone";
        }
        return "flashing: TOO OFTEN, " + most + ", at most " + FlashCount.ALLOWED
                + " pass; 'duskloom report' says where";
    }

    private static String power(Report report) {
        List<String> supplies = new ArrayList<>();
        for (SupplyFigures supply : report.power().supplies()) {
            supplies.add(Quoted.of(supply.supply().name()) + " gives up to "
                    + Figure.amps(supply.amps().peak()) + " ("
                    + Figure.percent(supply.peakShare()) + " of its "
                    + ShortestDecimal.of(supply.supply().amps()) + " A, at "
                    + Figure.moment(report, supply.amps().peakFrame())
                    + (supply.marginAmps() < 0
                            ? "; TOO MUCH, allowed "
                                    + Figure.percent(supply.supply().share())
                            : "")
                    + (Concern.couldNotGive(report, supply)
                            ? "; with all on " + Figure.amps(supply.fullAmps()) + ", which is more than it gives"
                            : "")
                    + ")");
        }
        if (!supplies.isEmpty()) {
            return "power: " + String.join(", ", supplies) + leastVolts(report);
        }
        List<String> ports = new ArrayList<>();
        report.power()
                .ports()
                .forEach(port -> ports.add(Quoted.of(port.port().name()) + " "
                        + Figure.amps(port.amps().peak())));
        return "power: up to " + String.join(", ", ports) + "; no supply is said";
    }

    /** Of the port that comes lowest, among those that are too low if there are any. */
    private static String leastVolts(Report report) {
        return report.power().ports().stream()
                .filter(port -> port.volts().isPresent())
                .min(Comparator.comparing((PortFigures port) -> !isTooLow(port))
                        .thenComparing(port -> port.volts().get().least()))
                .map(lowest -> "; least voltage "
                        + Figure.volts(lowest.volts().get().leastInHundredths()) + " on port "
                        + Quoted.of(lowest.port().name())
                        + (isTooLow(lowest)
                                ? " (TOO LOW, needs "
                                        + Figure.volts(
                                                lowest.volts().get().promised().getAsDouble()) + ")"
                                : ""))
                .orElse("");
    }

    private static boolean isTooLow(PortFigures port) {
        VoltFigures volts = port.volts().get();
        return volts.isTooLow(volts.leastPixel());
    }

    private static String data(Report report) {
        DataFigures data = report.data();
        PortTiming slowest = data.ports().get(0);
        for (PortTiming port : data.ports()) {
            slowest = port.highestRate() < slowest.highestRate() ? port : slowest;
        }
        return String.format(
                Locale.ROOT,
                "data: port %s takes %.1f ms a frame, %s a second at most, and the show has %s; %s, %.1f Mbit/s as E1.31",
                Quoted.of(slowest.port().name()),
                slowest.frameMillis(),
                Figure.rate(slowest.highestRate()),
                report.subject().rate(),
                Counted.of(data.universes(), "universe"),
                data.bitsPerSecond() / 1e6);
    }
}
