package org.duskloom.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.PropUse;
import org.duskloom.engine.report.Caution;
import org.duskloom.engine.report.CueUse;
import org.duskloom.engine.report.DataFigures;
import org.duskloom.engine.report.FlashWords;
import org.duskloom.engine.report.LightReport;
import org.duskloom.engine.report.PartLine;
import org.duskloom.engine.report.PortTiming;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;

/** A report in words and tables, for a terminal. */
final class ReportWords {
    private final Report report;
    private final ReportText text = new ReportText();

    private ReportWords(Report report) {
        this.report = report;
    }

    /** The whole report, each line ended. */
    static String of(Report report, boolean withCaps) {
        ReportWords words = new ReportWords(report);
        words.write(withCaps);
        return words.text.toString();
    }

    /** Which caps keep every supply within its share, for a report that goes into files. */
    static String caps(Report report) {
        ReportText text = new ReportText();
        new PowerWords(report, text).caps();
        return text.toString().stripLeading();
    }

    private void write(boolean withCaps) {
        subject();
        PowerWords power = new PowerWords(report, text);
        power.supplies();
        power.ports();
        power.feeds();
        if (withCaps) {
            power.caps();
        }
        data();
        report.light().ifPresent(light -> {
            flashes(light);
            use(light);
        });
        parts();
        assumptions();
        text.heading("Caution");
        Caution.LINES.forEach(text::broken);
    }

    private void subject() {
        String what = report.subject().everythingOn() ? ": everything on, not the show" : "";
        text.line(Quoted.plain(report.subject().title()) + what);
        text.line(Counted.of(report.subject().frameCount(), "frame") + " at "
                + report.subject().rate() + " a second, "
                + Words.duration(report.subject().seconds()) + ", "
                + Counted.of(report.subject().pixelCount(), "pixel"));
    }

    private void flashes(LightReport light) {
        text.heading("Flashing");
        text.broken(FlashWords.verdict(light.flashes()));
        TextTable table = ReportText.table(4);
        table.row("what", "most changes in a second", "allowed", "from", "where");
        count(table, "light", light, light.flashes().general());
        count(table, "saturated red", light, light.flashes().red());
        text.add(table);
        if (light.worst().count().most() > 0) {
            text.broken(Quoted.plain(FlashWords.worst(report, light)));
        }
        FlashWords.advice(light.worst()).forEach(line -> text.broken(Quoted.plain(line)));
        text.broken(FlashWords.measure(light.flashes()));
        FlashWords.CAUTION.forEach(text::broken);
    }

    private void count(TextTable table, String what, LightReport light, FlashCount count) {
        boolean none = count.most() == 0;
        table.row(
                what,
                String.valueOf(count.most()),
                String.valueOf(FlashCount.ALLOWED),
                none ? "" : Figure.moment(report, count.firstFrame()),
                none ? "" : Quoted.plain(FlashWords.where(count.place(), light)));
    }

    private void use(LightReport light) {
        text.heading("Use");
        TextTable table = ReportText.table(5);
        table.row("prop", "pixels", "dark", "mean light", "never lit");
        for (PropUse prop : light.use().props()) {
            table.row(
                    Quoted.plain(prop.prop()),
                    String.valueOf(prop.pixelCount()),
                    Figure.percent(prop.darkShare()),
                    Figure.percent(prop.meanLight()),
                    prop.neverLit().length == 0 ? "" : String.valueOf(prop.neverLit().length));
        }
        text.add(table);
        light.neverLit()
                .forEach(dark -> text.broken("never lit of " + Quoted.plain(dark.prop() + ": " + dark.which())));
        if (!light.use().hues().isEmpty()) {
            text.broken("colours: "
                    + light.use().hues().stream()
                            .map(hue -> hue.hue().word() + " " + Figure.percent(hue.share()))
                            .collect(Collectors.joining(", ")));
        }
        if (!light.cues().isEmpty()) {
            cues(light);
        }
    }

    private void cues(LightReport light) {
        text.line("What cues paint by themselves, over their pixels while they play:");
        TextTable cues = ReportText.table(3);
        cues.row("cue", "layer", "mean light");
        for (CueUse cue : light.cues()) {
            cues.row(
                    Quoted.plain(cue.cue()),
                    Quoted.plain(cue.layer()),
                    Figure.percent(cue.meanLight()) + (cue.mask() ? " let through" : ""));
        }
        text.add(cues);
    }

    private void data() {
        if (report.data().ports().isEmpty()) {
            return;
        }
        text.heading("Data");
        TextTable table = ReportText.table(4);
        table.row("port", "a frame takes", "frames a second", "universes", "");
        for (PortTiming port : report.data().ports()) {
            table.row(
                    Quoted.plain(port.port().name()),
                    String.format(Locale.ROOT, "%.2f ms", port.frameMillis()),
                    Figure.rate(port.highestRate()) + " at most",
                    port.firstUniverse() == port.lastUniverse()
                            ? String.valueOf(port.firstUniverse())
                            : port.firstUniverse() + " to " + port.lastUniverse(),
                    port.carries(report.subject().rate())
                            ? ""
                            : "too slow for " + report.subject().rate() + " a second");
        }
        text.add(table);
        DataFigures data = report.data();
        text.line(String.format(
                Locale.ROOT,
                "As E1.31: %s, %.2f Mbit/s on the network.",
                Counted.of(data.universes(), "universe"),
                data.bitsPerSecond() / 1e6));
        text.line(String.format(
                Locale.ROOT,
                "As DMX512: the fullest universe has %d slots, %s times a second at most; at %s a second a line carries %d.",
                data.fullestSlots(),
                Figure.rate(data.dmxRate()),
                report.subject().rate(),
                data.dmxSlots()));
    }

    private void parts() {
        if (report.parts().isEmpty()) {
            return;
        }
        text.heading("To buy and to cut");
        TextTable table = ReportText.table(3);
        for (PartLine part : report.parts()) {
            table.row(
                    part.group(),
                    Quoted.plain(part.item()),
                    part.unit().equals("m")
                            ? String.format(Locale.ROOT, "%.1f m", part.enough())
                            : String.valueOf(Math.round(part.enough())),
                    part.note());
        }
        text.add(table);
    }

    private void assumptions() {
        if (!report.assumptions().isEmpty()) {
            text.heading("Not said by the display: common practice, no source");
            report.assumptions().forEach(assumed -> text.line(Quoted.plain(assumed)));
        }
    }
}
