package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;

/** A report for programs: {@code report/1}, times in seconds, amperes, volts. */
public final class ReportJson {
    private static final String FORMAT = "report/1";

    private ReportJson() {}

    /** The text of the file. */
    public static String of(Report report) {
        JsonText json = new JsonText();
        ReportSubject subject = report.subject();
        json.field("duskloom", FORMAT);
        json.field("title", subject.title());
        json.field(
                "rate",
                JsonText.object(
                        "num", subject.rate().numerator(), "den", subject.rate().denominator()));
        json.field("frames", subject.frameCount());
        json.field("pixels", subject.pixelCount());
        json.field("seconds", number(subject.seconds()));
        json.field("everythingOn", subject.everythingOn());
        json.field("copperCelsius", number(subject.copperCelsius()));
        json.field("assumed", report.assumptions());
        json.field(
                "supplies",
                report.power().supplies().stream()
                        .map(supply -> supply(report, supply))
                        .toList());
        json.field("ports", ports(report));
        json.field("caps", CapAdvice.of(report).stream().map(ReportJson::caps).toList());
        json.field("network", network(report.data()));
        report.light().ifPresent(light -> LightJson.add(report, light, json));
        json.field("parts", report.parts().stream().map(ReportJson::part).toList());
        json.field("caution", Caution.LINES);
        return json.end();
    }

    private static JsonText.Inline number(double value) {
        return ReportNumbers.json(value);
    }

    private static JsonText.Inline supply(Report report, SupplyFigures figures) {
        return JsonText.object(
                "name", figures.supply().name(),
                "meanAmps", number(figures.amps().mean()),
                "p99Amps", number(figures.amps().p99()),
                "peakAmps", number(figures.amps().peak()),
                "peakAt", number(report.secondsOf(figures.amps().peakFrame())),
                "peakCues", report.cues().at(figures.amps().peakFrame()),
                "wattHours", number(figures.wattHours()),
                "share", number(figures.peakShare()),
                "volts", number(figures.supply().volts()),
                "amps", number(figures.supply().amps()),
                "allowedShare", number(figures.supply().share()),
                "marginAmps", number(figures.marginAmps()),
                "everythingOnAmps", number(figures.fullAmps()));
    }

    private static List<JsonText.Inline> ports(Report report) {
        List<JsonText.Inline> ports = new ArrayList<>();
        List<FeedLine> feeds = FeedLine.of(report);
        for (int i = 0; i < report.data().ports().size(); i++) {
            PortFigures figures = report.power().ports().get(i);
            List<JsonText.Inline> ofPort = feeds.stream()
                    .filter(feed -> feed.feed().port().equals(figures.port().name()))
                    .map(ReportJson::feed)
                    .toList();
            ports.add(port(report, figures, report.data().ports().get(i), ofPort));
        }
        return ports;
    }

    private static JsonText.Inline port(
            Report report, PortFigures figures, PortTiming timing, List<JsonText.Inline> feeds) {
        List<Object> fields = new ArrayList<>(List.of(
                "name", timing.port().name(),
                "pixels", timing.port().pixelCount(),
                "peakAmps", number(figures.amps().peak())));
        figures.volts()
                .ifPresent(volts -> fields.addAll(List.of(
                        "leastVolts", number(volts.least()),
                        "leastPixel", volts.leastPixel() + 1,
                        "leastAt", number(report.secondsOf(volts.leastFrame())))));
        fields.addAll(List.of(
                "frameMillis", number(timing.frameMillis()),
                "highestRate", number(timing.highestRate()),
                "universes", timing.universeCount(),
                "meanAmps", number(figures.amps().mean()),
                "p99Amps", number(figures.amps().p99()),
                "peakAt", number(report.secondsOf(figures.amps().peakFrame())),
                "everythingOnAmps", number(figures.fullAmps())));
        figures.volts()
                .filter(volts -> volts.promised().isPresent())
                .ifPresent(volts -> fields.addAll(List.of("tooLow", volts.tooLowCount())));
        if (!feeds.isEmpty()) {
            fields.addAll(List.of("feeds", JsonText.list(feeds.toArray())));
        }
        return JsonText.object(fields.toArray());
    }

    /** What flows through it is left out where nobody can know it. */
    private static JsonText.Inline feed(FeedLine line) {
        List<Object> fields = new ArrayList<>(List.of("pixel", line.feed().pixel() + 1));
        line.figures()
                .ifPresent(figures -> fields.addAll(List.of(
                        "peakAmps", number(figures.peakAmps()), "everythingOnAmps", number(figures.fullAmps()))));
        return JsonText.object(fields.toArray());
    }

    private static JsonText.Inline caps(CapAdvice advice) {
        return JsonText.object(
                "supply", advice.supply().supply().name(),
                "kept", advice.isKept(),
                "possible", advice.possible(),
                "ports",
                        JsonText.list(advice.ports().stream()
                                .map(port -> JsonText.object("port", port.port().name(), "cap", number(port.cap())))
                                .toArray()));
    }

    private static JsonText.Inline network(DataFigures data) {
        return JsonText.object(
                "universes", data.universes(),
                "bitsPerSecond", number(data.bitsPerSecond()),
                "fullestSlots", data.fullestSlots(),
                "dmxRate", number(data.dmxRate()),
                "dmxSlots", data.dmxSlots());
    }

    private static JsonText.Inline part(PartLine part) {
        return JsonText.object(
                "group", part.group(),
                "item", part.item(),
                "count", number(part.count()),
                "unit", part.unit(),
                "note", part.note());
    }
}
