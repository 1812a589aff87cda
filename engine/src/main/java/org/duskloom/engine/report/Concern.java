package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.meter.VoltFigures;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.FlashRule;
import org.duskloom.engine.preview.TimeLabel;
import org.duskloom.engine.text.Counted;

/**
 * Something of a show that is beyond a limit.
 *
 * @param matter in a word or two: {@code "current"}
 * @param text what it is, as a sentence without its full stop
 */
public record Concern(String matter, String text) {
    public Concern {
        Objects.requireNonNull(matter, "matter");
        Objects.requireNonNull(text, "text");
    }

    /** Everything that is beyond a limit, the most dangerous first. */
    public static List<Concern> of(Report report) {
        List<Concern> concerns = new ArrayList<>();
        report.power().supplies().forEach(supply -> addCurrent(supply, concerns));
        report.power().ports().forEach(port -> port.volts().ifPresent(volts -> addVolts(port, volts, concerns)));
        report.light().ifPresent(light -> addFlashes(report, light.flashes(), concerns));
        for (PortTiming port : report.data().ports()) {
            if (!port.carries(report.subject().rate())) {
                concerns.add(new Concern(
                        "data",
                        String.format(
                                Locale.ROOT,
                                "port %s can carry %.1f frames a second, and the show has %s",
                                port.port().name(),
                                Math.floor(10 * port.highestRate()) / 10,
                                report.subject().rate())));
            }
        }
        return concerns;
    }

    /**
     * Whether a supply that the show may leave in peace could still not give what a controller that hangs may ask for,
     * with everything on; never where everything on is what the report is about.
     */
    public static boolean couldNotGive(Report report, SupplyFigures supply) {
        return supply.fullAmps() > supply.supply().amps() && !report.subject().everythingOn();
    }

    private static void addCurrent(SupplyFigures supply, List<Concern> concerns) {
        if (supply.marginAmps() < 0) {
            concerns.add(new Concern(
                    "current",
                    String.format(
                            Locale.ROOT,
                            "supply %s would give up to %.2f A, and %.2f A of its %.2f A are allowed",
                            supply.supply().name(),
                            supply.amps().peak(),
                            supply.supply().allowedAmps(),
                            supply.supply().amps())));
        }
    }

    private static void addVolts(PortFigures port, VoltFigures volts, List<Concern> concerns) {
        if (volts.tooLowCount() > 0) {
            concerns.add(new Concern(
                    "voltage",
                    String.format(
                            Locale.ROOT,
                            "%s of port %s get less than the %.2f V they need, %s",
                            Counted.of(volts.tooLowCount(), "pixel"),
                            port.port().name(),
                            volts.promised().orElseThrow(),
                            volts.least() < 0
                                    ? "down to none: the wire cannot carry this"
                                    : String.format(Locale.ROOT, "down to %.2f V", volts.leastInHundredths()))));
        }
    }

    private static void addFlashes(Report report, FlashFigures flashes, List<Concern> concerns) {
        for (FlashCount count : List.of(flashes.general(), flashes.red())) {
            if (!flashes.passes(count)) {
                concerns.add(new Concern(
                        "flashing",
                        String.format(
                                Locale.ROOT,
                                "%s changes %d times within the second from %s, and %d are allowed%s%s",
                                count.rule() == FlashRule.RED ? "red" : "light",
                                count.most(),
                                TimeLabel.of(report.secondsOf(count.firstFrame())),
                                FlashCount.ALLOWED,
                                count.overJoint() ? ", where the show ends and starts over at once" : "",
                                flashes.seenFromMetres().isPresent()
                                        ? String.format(
                                                Locale.ROOT,
                                                "; what does so fills %.0f %% of the area that is allowed",
                                                100 * count.fieldShare())
                                        : "")));
            }
        }
    }
}
