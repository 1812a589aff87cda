package org.duskloom.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.duskloom.engine.meter.LeadFigures;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.meter.VoltFigures;
import org.duskloom.engine.report.CapAdvice;
import org.duskloom.engine.report.Concern;
import org.duskloom.engine.report.FeedLine;
import org.duskloom.engine.report.FeedWords;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/** What a report says of supplies, ports and feeds. */
final class PowerWords {
    private static final int MOST_CUES = 4;

    private final Report report;
    private final ReportText text;

    /** @param text where it is said */
    PowerWords(Report report, ReportText text) {
        this.report = report;
        this.text = text;
    }

    void supplies() {
        if (report.power().ports().isEmpty()) {
            text.heading("Power and data");
            text.line("Nothing is known: the show's pixels hang on no \"ports\".");
            return;
        }
        text.heading("Supplies");
        if (report.power().supplies().isEmpty()) {
            text.line("The display says of no \"supplies\" what they may give.");
            return;
        }
        TextTable table = ReportText.table(9);
        table.row("supply", "volts", "mean", "99 of 100", "peak", "allowed", "left", "all on", "energy", "peak at");
        for (SupplyFigures supply : report.power().supplies()) {
            table.row(
                    Quoted.plain(supply.supply().name()),
                    ShortestDecimal.of(supply.supply().volts()) + " V",
                    Figure.amps(supply.amps().mean()),
                    Figure.amps(supply.amps().p99()),
                    Figure.amps(supply.amps().peak()),
                    Figure.amps(supply.supply().allowedAmps()),
                    Figure.amps(supply.marginAmps()),
                    Figure.amps(supply.fullAmps()),
                    String.format(Locale.ROOT, "%.2f Wh", supply.wattHours()),
                    report.subject().everythingOn() ? "all the time" : peak(supply));
        }
        text.add(table);
        for (SupplyFigures supply : report.power().supplies()) {
            judge(supply);
        }
    }

    private String peak(SupplyFigures supply) {
        long frame = supply.amps().peakFrame();
        List<String> cues = report.cues().at(frame);
        String told = String.join(
                ", ", cues.stream().limit(MOST_CUES).map(Quoted::plain).toList());
        return Figure.moment(report, frame) + ": " + told
                + (cues.size() > MOST_CUES ? " and " + (cues.size() - MOST_CUES) + " more" : "");
    }

    private void judge(SupplyFigures supply) {
        String name = "supply " + Quoted.of(supply.supply().name());
        String of = ShortestDecimal.of(supply.supply().amps()) + " A";
        if (supply.amps().peak() > supply.supply().amps()) {
            text.line(name + " would have to give more than its " + of + ".");
        } else if (supply.marginAmps() < 0) {
            text.line(name + " gives " + Figure.percent(supply.peakShare()) + " of its " + of + ", and its share is "
                    + Figure.percent(supply.supply().share()) + "; --cap says how to lower it.");
        }
        if (Concern.couldNotGive(report, supply)) {
            text.line(couldNotGive(supply) + ".");
        }
    }

    static String couldNotGive(SupplyFigures supply) {
        return "supply " + Quoted.of(supply.supply().name()) + " could not give " + Figure.amps(supply.fullAmps())
                + ", which a controller that hangs may ask for";
    }

    void ports() {
        if (report.power().ports().isEmpty()) {
            return;
        }
        text.heading("Ports");
        TextTable table = ReportText.table(8);
        table.row("port", "pixels", "mean", "99 of 100", "peak", "peak at", "all on", "least volts", "where and when");
        for (PortFigures port : report.power().ports()) {
            table.row(
                    Quoted.plain(port.port().name()),
                    String.valueOf(port.port().pixelCount()),
                    Figure.amps(port.amps().mean()),
                    Figure.amps(port.amps().p99()),
                    Figure.amps(port.amps().peak()),
                    Figure.moment(report, port.amps().peakFrame()),
                    Figure.amps(port.fullAmps()),
                    port.volts()
                            .map(volts -> Figure.volts(volts.leastInHundredths()))
                            .orElse("not known"),
                    port.volts().map(this::least).orElse(unknownVolts(port)));
        }
        text.add(table);
    }

    private String unknownVolts(PortFigures port) {
        return report.power().supplyOf(port.port()).isEmpty() ? "no supply feeds it" : "it has no \"line\"";
    }

    private String least(VoltFigures volts) {
        int tooLow = volts.tooLowCount();
        return "pixel " + (volts.leastPixel() + 1) + " at " + Figure.moment(report, volts.leastFrame())
                + (tooLow == 0
                        ? ""
                        : "; " + Counted.of(tooLow, "pixel") + " under "
                                + Figure.volts(volts.promised().getAsDouble()))
                + (volts.least() < 0 ? "; the wire cannot carry this" : "");
    }

    void feeds() {
        List<FeedLine> feeds = FeedLine.of(report);
        if (feeds.isEmpty()) {
            return;
        }
        text.heading("Feeds");
        TextTable table = ReportText.table(6);
        table.row("port", "pixel", "wire", "peak", "", "all on", "to compare");
        for (FeedLine feed : feeds) {
            Optional<LeadFigures> flow = feed.figures();
            table.row(
                    Quoted.plain(feed.port().port().name()),
                    String.valueOf(feed.feed().pixel() + 1),
                    FeedWords.wire(feed.feed()),
                    flow.map(lead -> Figure.amps(lead.peakAmps())).orElse(""),
                    flow.map(lead -> Figure.watts(lead.peakAmps() * feed.volts()))
                            .orElse(""),
                    flow.map(lead -> Figure.amps(lead.fullAmps())).orElse(""),
                    flow.map(lead -> FeedWords.compared(feed.volts(), lead)).orElse(FeedLine.NOT_KNOWN));
        }
        text.add(table);
        text.broken(FeedWords.CAUTION);
    }

    /** Which caps keep every supply within its share. */
    void caps() {
        text.heading("Caps");
        if (report.power().supplies().isEmpty()) {
            text.line("Without \"supplies\" there is no share to keep.");
        }
        for (CapAdvice advice : CapAdvice.of(report)) {
            String name = "supply " + Quoted.of(advice.supply().supply().name());
            if (advice.isKept()) {
                text.line(name + " keeps within its share as it is.");
            } else if (!advice.possible()) {
                text.line(name + ": what flows in the dark is more than its share; no cap helps.");
            } else {
                text.line(name + " keeps within its share with");
                advice.ports()
                        .forEach(port -> text.line("  \"cap\": " + ShortestDecimal.of(port.cap()) + " on port "
                                + Quoted.of(port.port().name()) + " instead of "
                                + ShortestDecimal.of(
                                        port.port().signal().brightness().cap())));
            }
        }
    }
}
