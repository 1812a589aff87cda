package org.duskloom.engine.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.meter.VoltFigures;
import org.duskloom.engine.report.Concern;
import org.duskloom.engine.report.FeedLine;
import org.duskloom.engine.report.FeedWords;
import org.duskloom.engine.report.Report;

/** Current of the supplies over time, and voltage along the lines. */
final class PowerSection {
    private static final double HEADROOM = 1.12;
    private static final int ROWS_OF_NUMBERS = 12;

    private final Report report;
    private final Html html;

    PowerSection(Report report, Html html) {
        this.report = report;
        this.html = html;
    }

    void write() {
        html.element("h2", "Current");
        if (report.power().ports().isEmpty()) {
            html.element("p", "Nothing is known of it: the pixels of this show hang on no \"ports\".");
            return;
        }
        if (report.power().supplies().isEmpty()) {
            html.element("p", "The display has no \"supplies\", so there are no limits to compare with.");
        } else {
            supplies();
        }
        ports();
        html.element("h2", "Voltage along each line");
        if (report.power().ports().stream().allMatch(port -> port.volts().isEmpty())) {
            html.element("p", "Not known: no port has both a \"line\" and a supply that feeds it.");
        }
        report.power().ports().forEach(port -> port.volts().ifPresent(volts -> volts(port, volts)));
        List<FeedLine> feeds = FeedLine.of(report);
        if (!feeds.isEmpty()) {
            html.element("h2", "Feeds");
            feeds(feeds);
        }
    }

    private void supplies() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "supply", "volts", "mean", "99 of 100 frames", "peak", "allowed", "judged", "all on", "energy"));
        for (SupplyFigures supply : report.power().supplies()) {
            rows.add(List.of(
                    supply.supply().name(),
                    Figures.volts(supply.supply().volts()),
                    Figures.amps(supply.amps().mean()),
                    Figures.amps(supply.amps().p99()),
                    Figures.amps(supply.amps().peak()),
                    Figures.amps(supply.supply().allowedAmps()) + " of "
                            + Figures.amps(supply.supply().amps()),
                    supply.marginAmps() < 0 ? "\u2717 too much" : "within",
                    Figures.amps(supply.fullAmps())
                            + (Concern.couldNotGive(report, supply) ? ", \u2717 more than it gives" : ""),
                    Figures.wattHours(supply.wattHours())));
        }
        html.table(rows);
        if (!report.subject().everythingOn()) {
            report.power().supplies().forEach(this::supply);
        }
    }

    private void supply(SupplyFigures supply) {
        double[] columns = supply.amps().columns();
        double high = HEADROOM * Math.max(supply.supply().amps(), supply.amps().peak());
        String peakAt = Figures.time(report.secondsOf(supply.amps().peakFrame()));
        String cues = String.join(", ", report.cues().at(supply.amps().peakFrame()));
        html.raw("<figure>")
                .element(
                        "figcaption",
                        "Supply " + supply.supply().name() + ": the most in each stretch of the show. Peak "
                                + Figures.amps(supply.amps().peak()) + " at " + peakAt
                                + (cues.isEmpty() ? "" : ", in " + cues) + ".");
        double allowed = supply.supply().allowedAmps();
        Plot plot = new Plot(columns, 0, high)
                .limit(
                        supply.supply().amps(),
                        "supply " + Figures.amps(supply.supply().amps()),
                        true);
        if (allowed < supply.supply().amps()) {
            plot.limit(allowed, "allowed " + Figures.amps(allowed), false);
        }
        plot.draw(
                html,
                "Current of supply " + supply.supply().name() + " over time, between "
                        + Figures.amps(Arrays.stream(columns).min().orElse(0)) + " and "
                        + Figures.amps(supply.amps().peak()),
                "0 A",
                Figures.amps(high),
                "0:00",
                Figures.time(report.subject().seconds()));
        numbers(columns);
        html.raw("</figure>\n");
    }

    /** The same as numbers, more coarsely. */
    private void numbers(double[] columns) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("from", "to", "most"));
        int count = Math.min(ROWS_OF_NUMBERS, columns.length);
        for (int i = 0; i < count; i++) {
            int first = i * columns.length / count;
            int end = (i + 1) * columns.length / count;
            double most = Arrays.stream(columns, first, end).max().orElse(0);
            double step = report.subject().seconds() / columns.length;
            rows.add(List.of(Figures.time(first * step), Figures.time(end * step), Figures.amps(most)));
        }
        html.raw("<details>").element("summary", "as numbers").table(rows).raw("</details>\n");
    }

    private void ports() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("port", "pixels", "mean", "peak", "peak at", "all on", "least voltage", "judged"));
        for (PortFigures port : report.power().ports()) {
            rows.add(List.of(
                    port.port().name(),
                    String.valueOf(port.port().pixelCount()),
                    Figures.amps(port.amps().mean()),
                    Figures.amps(port.amps().peak()),
                    Figures.time(report.secondsOf(port.amps().peakFrame())),
                    Figures.amps(port.fullAmps()),
                    port.volts()
                            .map(volts -> Figures.volts(volts.leastInHundredths()))
                            .orElse("not known"),
                    port.volts().map(PowerSection::judged).orElse("")));
        }
        html.table(rows);
    }

    /** What flows through each cable, for its fuse. */
    private void feeds(List<FeedLine> feeds) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("port", "pixel", "wire", "peak", "all on", "to compare"));
        for (FeedLine feed : feeds) {
            rows.add(List.of(
                    feed.port().port().name(),
                    String.valueOf(feed.feed().pixel() + 1),
                    FeedWords.wire(feed.feed()),
                    feed.figures()
                            .map(lead -> flow(lead.peakAmps(), feed.volts()))
                            .orElse(FeedLine.NOT_KNOWN),
                    feed.figures()
                            .map(lead -> flow(lead.fullAmps(), feed.volts()))
                            .orElse(""),
                    feed.figures()
                            .map(lead -> FeedWords.compared(feed.volts(), lead))
                            .orElse("")));
        }
        html.table(rows);
        html.element("p class=\"caution\"", FeedWords.CAUTION);
    }

    private static String flow(double amps, double volts) {
        return Figures.amps(amps) + ", " + Figures.watts(amps * volts);
    }

    private static String judged(VoltFigures volts) {
        if (volts.promised().isEmpty()) {
            return "needs not said";
        }
        return volts.tooLowCount() > 0 ? "\u2717 " + volts.tooLowCount() + " too low" : "none too low";
    }

    private void volts(PortFigures port, VoltFigures volts) {
        double[] least = volts.leastByPixel();
        double bottom = Math.min(volts.least(), volts.promised().orElse(volts.least()));
        double low = Math.max(0, bottom - 0.15 * Math.max(0.2, volts.sourceVolts() - bottom));
        String fed = volts.leads().stream()
                .map(lead -> String.valueOf(lead.feed().pixel() + 1))
                .collect(Collectors.joining(", "));
        html.raw("<figure>")
                .element(
                        "figcaption",
                        "Port " + port.port().name() + ": the least voltage of each pixel in the chain. "
                                + Figures.volts(volts.leastInHundredths()) + " at pixel " + (volts.leastPixel() + 1)
                                + ", "
                                + Figures.time(report.secondsOf(volts.leastFrame())) + ". Fed at " + fed + " (ticks).");
        // The line of what is needed stands above the supply's where that gives too little.
        double high = Math.max(volts.sourceVolts(), volts.promised().orElse(0));
        Plot plot = new Plot(least, low, high);
        volts.promised().ifPresent(needed -> plot.limit(needed, "needs " + Figures.volts(needed), false));
        volts.leads().forEach(lead -> plot.mark((lead.feed().pixel() + 0.5) / least.length));
        plot.draw(
                html,
                "Least voltage along port " + port.port().name() + ", from " + Figures.volts(volts.sourceVolts())
                        + " of its supply down to " + Figures.volts(volts.leastInHundredths()),
                Figures.volts(low),
                Figures.volts(high),
                "pixel 1",
                "pixel " + least.length);
        html.raw("</figure>\n");
    }
}
