package org.duskloom.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.duskloom.engine.meter.LeadFigures;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.meter.VoltFigures;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.FlashRule;
import org.duskloom.engine.meter.light.PropUse;
import org.duskloom.engine.preview.TimeLabel;
import org.duskloom.engine.report.CapAdvice;
import org.duskloom.engine.report.Caution;
import org.duskloom.engine.report.Concern;
import org.duskloom.engine.report.CueUse;
import org.duskloom.engine.report.DataFigures;
import org.duskloom.engine.report.FeedLine;
import org.duskloom.engine.report.FeedWords;
import org.duskloom.engine.report.FlashWords;
import org.duskloom.engine.report.LightReport;
import org.duskloom.engine.report.PartLine;
import org.duskloom.engine.report.PortTiming;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/** A report in words and tables, for a terminal. */
final class ReportWords {
    private static final int WIDTH = 120;
    private static final int MOST_CUES = 4;

    private final Report report;
    private final StringBuilder text = new StringBuilder();

    private ReportWords(Report report) {
        this.report = report;
    }

    /** The whole report, each line ended. */
    static String of(Report report, boolean withCaps) {
        ReportWords words = new ReportWords(report);
        words.subject();
        words.supplies();
        words.ports();
        words.feeds();
        if (withCaps) {
            words.caps();
        }
        words.data();
        report.light().ifPresent(light -> {
            words.flashes(light);
            words.use(light);
        });
        words.parts();
        words.assumptions();
        words.heading("Caution");
        Caution.LINES.forEach(words::broken);
        return words.text.toString();
    }

    /** Which caps keep every supply within its share, for a report that goes into files. */
    static String caps(Report report) {
        ReportWords words = new ReportWords(report);
        words.caps();
        return words.text.toString().stripLeading();
    }

    /** Some lines for the end of a rendering. */
    static List<String> brief(Report report, Optional<FlashFigures> flashes) {
        String flashing = flashes.map(found -> briefFlashes(report, found))
                .orElse("flashing: not looked at with so many pixels; 'duskloom report' does");
        return report.power().ports().isEmpty()
                ? List.of(flashing)
                : List.of(briefPower(report), briefData(report), flashing, "caution: " + Caution.SHORT);
    }

    private static String briefFlashes(Report report, FlashFigures flashes) {
        FlashCount worst = flashes.worst();
        String most = worst.most() + " changes of " + (worst.rule() == FlashRule.RED ? "red" : "light")
                + " in the second from " + moment(report, worst.firstFrame());
        if (flashes.passes()) {
            return "flashing: " + (worst.most() == 0 ? "none" : "at most " + most) + "; no guarantee for anyone";
        }
        return "flashing: TOO OFTEN, " + most + ", at most " + FlashCount.ALLOWED
                + " pass; 'duskloom report' says where";
    }

    private void flashes(LightReport light) {
        heading("Flashing");
        broken(FlashWords.verdict(light.flashes()));
        TextTable table = new TextTable(WIDTH, 4);
        table.row("what", "most changes in a second", "allowed", "from", "where");
        count(table, "light", light, light.flashes().general());
        count(table, "saturated red", light, light.flashes().red());
        text.append(table.text());
        if (light.worst().count().most() > 0) {
            broken(Quoted.plain(FlashWords.worst(report, light)));
        }
        FlashWords.advice(light.worst()).forEach(line -> broken(Quoted.plain(line)));
        broken(FlashWords.measure(light.flashes()));
        FlashWords.CAUTION.forEach(this::broken);
    }

    private void count(TextTable table, String what, LightReport light, FlashCount count) {
        boolean none = count.most() == 0;
        table.row(
                what,
                String.valueOf(count.most()),
                String.valueOf(FlashCount.ALLOWED),
                none ? "" : moment(report, count.firstFrame()),
                none ? "" : Quoted.plain(FlashWords.where(count.place(), light)));
    }

    private void use(LightReport light) {
        heading("Use");
        TextTable table = new TextTable(WIDTH, 5);
        table.row("prop", "pixels", "dark", "mean light", "never lit");
        for (PropUse prop : light.use().props()) {
            table.row(
                    Quoted.plain(prop.prop()),
                    String.valueOf(prop.pixelCount()),
                    percent(prop.darkShare()),
                    percent(prop.meanLight()),
                    prop.neverLit().length == 0 ? "" : String.valueOf(prop.neverLit().length));
        }
        text.append(table.text());
        light.neverLit().forEach(dark -> broken("never lit of " + Quoted.plain(dark.prop() + ": " + dark.which())));
        if (!light.use().hues().isEmpty()) {
            broken("colours: "
                    + light.use().hues().stream()
                            .map(hue -> hue.hue().word() + " " + percent(hue.share()))
                            .collect(Collectors.joining(", ")));
        }
        if (!light.cues().isEmpty()) {
            cues(light);
        }
    }

    private void cues(LightReport light) {
        line("What cues paint by themselves, over their pixels while they play:");
        TextTable cues = new TextTable(WIDTH, 3);
        cues.row("cue", "layer", "mean light");
        for (CueUse cue : light.cues()) {
            cues.row(
                    Quoted.plain(cue.cue()),
                    Quoted.plain(cue.layer()),
                    percent(cue.meanLight()) + (cue.mask() ? " let through" : ""));
        }
        text.append(cues.text());
    }

    private static String briefPower(Report report) {
        List<String> supplies = new ArrayList<>();
        for (SupplyFigures supply : report.power().supplies()) {
            supplies.add(Quoted.of(supply.supply().name()) + " gives up to "
                    + amps(supply.amps().peak()) + " ("
                    + percent(supply.peakShare()) + " of its "
                    + ShortestDecimal.of(supply.supply().amps()) + " A, at "
                    + moment(report, supply.amps().peakFrame())
                    + (supply.marginAmps() < 0
                            ? "; TOO MUCH, allowed " + percent(supply.supply().share())
                            : "")
                    + (Concern.couldNotGive(report).contains(supply)
                            ? "; with all on " + amps(supply.fullAmps()) + ", which is more than it gives"
                            : "")
                    + ")");
        }
        if (!supplies.isEmpty()) {
            return "power: " + String.join(", ", supplies) + leastVolts(report);
        }
        List<String> ports = new ArrayList<>();
        report.power()
                .ports()
                .forEach(port -> ports.add(
                        Quoted.of(port.port().name()) + " " + amps(port.amps().peak())));
        return "power: up to " + String.join(", ", ports) + "; no supply is said";
    }

    /** Of the port that comes lowest, among those that are too low if there are any. */
    private static String leastVolts(Report report) {
        return report.power().ports().stream()
                .filter(port -> port.volts().isPresent())
                .min(Comparator.comparing((PortFigures port) -> !isTooLow(port))
                        .thenComparing(port -> port.volts().get().least()))
                .map(lowest -> "; least voltage " + volts(lowest.volts().get().leastInHundredths()) + " on port "
                        + Quoted.of(lowest.port().name())
                        + (isTooLow(lowest)
                                ? " (TOO LOW, needs "
                                        + volts(lowest.volts().get().promised().getAsDouble()) + ")"
                                : ""))
                .orElse("");
    }

    private static boolean isTooLow(PortFigures port) {
        VoltFigures volts = port.volts().get();
        return volts.isTooLow(volts.leastPixel());
    }

    private static String briefData(Report report) {
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
                rate(slowest.highestRate()),
                report.subject().rate(),
                Counted.of(data.universes(), "universe"),
                data.bitsPerSecond() / 1e6);
    }

    private void subject() {
        String what = report.subject().everythingOn() ? ": everything on, not the show" : "";
        line(Quoted.plain(report.subject().title()) + what);
        line(Counted.of(report.subject().frameCount(), "frame") + " at "
                + report.subject().rate() + " a second, "
                + Words.duration(report.subject().seconds()) + ", "
                + Counted.of(report.subject().pixelCount(), "pixel"));
    }

    private void supplies() {
        if (report.power().ports().isEmpty()) {
            heading("Power and data");
            line("Nothing is known: the show's pixels hang on no \"ports\".");
            return;
        }
        heading("Supplies");
        if (report.power().supplies().isEmpty()) {
            line("The display says of no \"supplies\" what they may give.");
            return;
        }
        TextTable table = new TextTable(WIDTH, 9);
        table.row("supply", "volts", "mean", "99 of 100", "peak", "allowed", "left", "all on", "energy", "peak at");
        for (SupplyFigures supply : report.power().supplies()) {
            table.row(
                    Quoted.plain(supply.supply().name()),
                    ShortestDecimal.of(supply.supply().volts()) + " V",
                    amps(supply.amps().mean()),
                    amps(supply.amps().p99()),
                    amps(supply.amps().peak()),
                    amps(supply.supply().allowedAmps()),
                    amps(supply.marginAmps()),
                    amps(supply.fullAmps()),
                    String.format(Locale.ROOT, "%.2f Wh", supply.wattHours()),
                    report.subject().everythingOn() ? "all the time" : peak(supply));
        }
        text.append(table.text());
        for (SupplyFigures supply : report.power().supplies()) {
            judge(supply);
        }
    }

    private String peak(SupplyFigures supply) {
        long frame = supply.amps().peakFrame();
        List<String> cues = report.cues().at(frame);
        String told = String.join(
                ", ", cues.stream().limit(MOST_CUES).map(Quoted::plain).toList());
        return moment(report, frame) + ": " + told
                + (cues.size() > MOST_CUES ? " and " + (cues.size() - MOST_CUES) + " more" : "");
    }

    private void judge(SupplyFigures supply) {
        String name = "supply " + Quoted.of(supply.supply().name());
        String of = ShortestDecimal.of(supply.supply().amps()) + " A";
        if (supply.amps().peak() > supply.supply().amps()) {
            line(name + " would have to give more than its " + of + ".");
        } else if (supply.marginAmps() < 0) {
            line(name + " gives " + percent(supply.peakShare()) + " of its " + of + ", and its share is "
                    + percent(supply.supply().share()) + "; --cap says how to lower it.");
        }
        if (Concern.couldNotGive(report).contains(supply)) {
            line(name + " could not give " + amps(supply.fullAmps()) + ", which a controller that hangs may ask for.");
        }
    }

    private void ports() {
        if (report.power().ports().isEmpty()) {
            return;
        }
        heading("Ports");
        TextTable table = new TextTable(WIDTH, 8);
        table.row("port", "pixels", "mean", "99 of 100", "peak", "peak at", "all on", "least volts", "where and when");
        for (PortFigures port : report.power().ports()) {
            table.row(
                    Quoted.plain(port.port().name()),
                    String.valueOf(port.port().pixelCount()),
                    amps(port.amps().mean()),
                    amps(port.amps().p99()),
                    amps(port.amps().peak()),
                    moment(report, port.amps().peakFrame()),
                    amps(port.fullAmps()),
                    port.volts().map(volts -> volts(volts.leastInHundredths())).orElse("not known"),
                    port.volts().map(this::least).orElse(unknownVolts(port)));
        }
        text.append(table.text());
    }

    private String unknownVolts(PortFigures port) {
        return report.power().supplyOf(port.port()).isEmpty() ? "no supply feeds it" : "it has no \"line\"";
    }

    private String least(VoltFigures volts) {
        int tooLow = volts.tooLowCount();
        return "pixel " + (volts.leastPixel() + 1) + " at " + moment(report, volts.leastFrame())
                + (tooLow == 0
                        ? ""
                        : "; " + Counted.of(tooLow, "pixel") + " under "
                                + volts(volts.promised().getAsDouble()))
                + (volts.least() < 0 ? "; the wire cannot carry this" : "");
    }

    private void feeds() {
        List<FeedLine> feeds = FeedLine.of(report);
        if (feeds.isEmpty()) {
            return;
        }
        heading("Feeds");
        TextTable table = new TextTable(WIDTH, 6);
        table.row("port", "pixel", "wire", "peak", "", "all on", "to compare");
        for (FeedLine feed : feeds) {
            Optional<LeadFigures> flow = feed.figures();
            table.row(
                    Quoted.plain(feed.port().port().name()),
                    String.valueOf(feed.feed().pixel() + 1),
                    FeedWords.wire(feed.feed()),
                    flow.map(lead -> amps(lead.peakAmps())).orElse(""),
                    flow.map(lead -> watts(lead.peakAmps() * feed.volts())).orElse(""),
                    flow.map(lead -> amps(lead.fullAmps())).orElse(""),
                    flow.map(lead -> FeedWords.compared(feed.volts(), lead)).orElse(FeedLine.NOT_KNOWN));
        }
        text.append(table.text());
        broken(FeedWords.CAUTION);
    }

    private void caps() {
        heading("Caps");
        if (report.power().supplies().isEmpty()) {
            line("Without \"supplies\" there is no share to keep.");
        }
        for (CapAdvice advice : CapAdvice.of(report)) {
            String name = "supply " + Quoted.of(advice.supply().supply().name());
            if (advice.isKept()) {
                line(name + " keeps within its share as it is.");
            } else if (!advice.possible()) {
                line(name + ": what flows in the dark is more than its share; no cap helps.");
            } else {
                line(name + " keeps within its share with");
                advice.ports()
                        .forEach(port -> line("  \"cap\": " + ShortestDecimal.of(port.cap()) + " on port "
                                + Quoted.of(port.port().name()) + " instead of "
                                + ShortestDecimal.of(
                                        port.port().signal().brightness().cap())));
            }
        }
    }

    private void data() {
        if (report.data().ports().isEmpty()) {
            return;
        }
        heading("Data");
        TextTable table = new TextTable(WIDTH, 4);
        table.row("port", "a frame takes", "frames a second", "universes", "");
        for (PortTiming port : report.data().ports()) {
            table.row(
                    Quoted.plain(port.port().name()),
                    String.format(Locale.ROOT, "%.2f ms", port.frameMillis()),
                    rate(port.highestRate()) + " at most",
                    port.firstUniverse() == port.lastUniverse()
                            ? String.valueOf(port.firstUniverse())
                            : port.firstUniverse() + " to " + port.lastUniverse(),
                    port.carries(report.subject().rate())
                            ? ""
                            : "too slow for " + report.subject().rate() + " a second");
        }
        text.append(table.text());
        DataFigures data = report.data();
        line(String.format(
                Locale.ROOT,
                "As E1.31: %s, %.2f Mbit/s on the network.",
                Counted.of(data.universes(), "universe"),
                data.bitsPerSecond() / 1e6));
        line(String.format(
                Locale.ROOT,
                "As DMX512: the fullest universe has %d slots, %s times a second at most; at %s a second a line carries %d.",
                data.fullestSlots(),
                rate(data.dmxRate()),
                report.subject().rate(),
                data.dmxSlots()));
    }

    private void parts() {
        if (report.parts().isEmpty()) {
            return;
        }
        heading("To buy and to cut");
        TextTable table = new TextTable(WIDTH, 3);
        for (PartLine part : report.parts()) {
            table.row(
                    part.group(),
                    Quoted.plain(part.item()),
                    part.unit().equals("m")
                            ? String.format(Locale.ROOT, "%.1f m", part.enough())
                            : String.valueOf(Math.round(part.enough())),
                    part.note());
        }
        text.append(table.text());
    }

    private void assumptions() {
        if (!report.assumptions().isEmpty()) {
            heading("Not said by the display: common practice, no source");
            report.assumptions().forEach(assumed -> line(Quoted.plain(assumed)));
        }
    }

    private void heading(String heading) {
        text.append(System.lineSeparator());
        line(heading);
    }

    /** A long line, broken between words. */
    private void broken(String line) {
        TextTable table = new TextTable(WIDTH, 0);
        table.row(line);
        text.append(table.text());
    }

    private void line(String line) {
        text.append(line).append(System.lineSeparator());
    }

    private static String moment(Report report, long frame) {
        return TimeLabel.of(report.secondsOf(frame));
    }

    private static String amps(double amps) {
        return String.format(Locale.ROOT, "%.2f A", amps);
    }

    /** The model goes on below nothing; what is left then is nothing. */
    private static String volts(double volts) {
        return volts < 0 ? "none" : String.format(Locale.ROOT, "%.2f V", volts);
    }

    private static String watts(double watts) {
        return String.format(Locale.ROOT, "%.0f W", watts);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /** Rounded down: what is said must be possible. */
    private static String rate(double rate) {
        return String.format(Locale.ROOT, "%.1f", Math.floor(10 * rate) / 10);
    }
}
