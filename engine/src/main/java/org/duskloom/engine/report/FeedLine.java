package org.duskloom.engine.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.duskloom.engine.meter.LeadFigures;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.meter.VoltFigures;
import org.duskloom.engine.wire.Feed;

/**
 * One cable from a supply to a line, as reports list it. How several feeds share the current of a port depends on its
 * line; where the display does not say what wire that is, a single feed still carries all of it.
 *
 * @param port what it feeds
 * @param feed which it is
 * @param volts what its supply gives
 * @param figures what flows through it; nothing where that is not known
 */
public record FeedLine(PortFigures port, Feed feed, double volts, Optional<LeadFigures> figures) {
    /** Stands for the figures where they are not known. */
    public static final String NOT_KNOWN = "not known: it has no \"line\"";

    /** Those of all ports, in the order of the ports and of their feeds. */
    public static List<FeedLine> of(Report report) {
        return report.power().ports().stream()
                .flatMap(port -> port.volts()
                        .map(volts -> measured(port, volts))
                        .orElseGet(() -> report.power().supplyOf(port.port()).stream()
                                .flatMap(supply -> withoutLine(port, supply))))
                .toList();
    }

    private static Stream<FeedLine> measured(PortFigures port, VoltFigures volts) {
        return volts.leads().stream()
                .map(lead -> new FeedLine(port, lead.feed(), volts.sourceVolts(), Optional.of(lead)));
    }

    private static Stream<FeedLine> withoutLine(PortFigures port, SupplyFigures supply) {
        List<Feed> feeds = supply.supply().feedsOf(port.port().name());
        return feeds.stream()
                .map(feed -> new FeedLine(
                        port,
                        feed,
                        supply.supply().volts(),
                        feeds.size() > 1
                                ? Optional.empty()
                                : Optional.of(new LeadFigures(feed, port.amps().peak(), port.fullAmps()))));
    }
}
