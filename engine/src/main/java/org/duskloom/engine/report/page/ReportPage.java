package org.duskloom.engine.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.report.Caution;
import org.duskloom.engine.report.Concern;
import org.duskloom.engine.report.DataFigures;
import org.duskloom.engine.report.PartLine;
import org.duskloom.engine.report.PortTiming;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.text.Counted;

/** A report as one page for a browser, which needs nothing else. */
public final class ReportPage {
    private final Report report;
    private final Html html = new Html();

    private ReportPage(Report report) {
        this.report = report;
    }

    /** The text of the file. */
    public static String of(Report report) {
        ReportPage page = new ReportPage(report);
        page.write();
        return page.html.toString();
    }

    private void write() {
        head();
        verdict();
        new PowerSection(report, html).write();
        report.light().ifPresent(light -> new LightSection(report, light, html).lightOverTime());
        report.light().ifPresent(light -> new LightSection(report, light, html).flashes());
        data();
        report.light().ifPresent(light -> new LightSection(report, light, html).use());
        parts();
        foot();
        html.raw("</main>\n</body>\n</html>\n");
    }

    private void head() {
        html.raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src"
                        + " 'unsafe-inline'; img-src data:\"/>\n"
                        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n")
                .element("title", report.subject().title() + ": before switching on")
                .raw("<style>\n" + PageStyle.TEXT + "</style>\n</head>\n<body>\n<main>\n")
                .element("p class=\"kind\"", "Before switching on")
                .element("h1", report.subject().title());
        html.element(
                "p class=\"facts\"",
                (report.subject().everythingOn() ? "Everything on, not the show: " : "")
                        + Counted.of(report.subject().frameCount(), "frame") + " at "
                        + report.subject().rate() + " a second, "
                        + Figures.time(report.subject().seconds()) + " long, "
                        + Counted.of(report.subject().pixelCount(), "pixel") + "; wires at "
                        + Figures.oneDigit(report.subject().copperCelsius()) + " \u00b0C.");
    }

    private void verdict() {
        List<Concern> concerns = Concern.of(report);
        List<SupplyFigures> weak = report.power().supplies().stream()
                .filter(supply -> Concern.couldNotGive(report, supply))
                .toList();
        html.raw("<section class=\"verdict" + (concerns.isEmpty() ? "" : " beyond") + "\">\n");
        if (concerns.isEmpty()) {
            html.element(
                    "p class=\"line\"", "Nothing that could be looked at is beyond its limit. That is no guarantee.");
        } else {
            html.element(
                    "p class=\"line\"",
                    "\u2717 "
                            + (concerns.size() == 1
                                    ? "One thing is beyond its limit"
                                    : concerns.size() + " things are beyond their limits")
                            + (weak.isEmpty() ? "." : ", and with everything on there would be more."));
            html.raw("<ul>\n");
            concerns.forEach(concern -> html.raw("<li>")
                    .raw("<strong>")
                    .text(concern.matter())
                    .raw("</strong> ")
                    .text(concern.text() + ".")
                    .raw("</li>\n"));
            html.raw("</ul>\n");
        }
        weak.forEach(supply -> html.element(
                "p",
                "Supply " + supply.supply().name() + " could not give " + Figures.amps(supply.fullAmps())
                        + ", which a controller that hangs may ask for; it gives "
                        + Figures.amps(supply.supply().amps()) + "."));
        html.element("p", Caution.LINES.get(0)).raw("</section>\n");
    }

    private void data() {
        DataFigures data = report.data();
        if (data.ports().isEmpty()) {
            return;
        }
        html.element("h2", "Data");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("port", "a frame takes", "frames a second at most", "universes", "judged"));
        for (PortTiming port : data.ports()) {
            rows.add(List.of(
                    port.port().name(),
                    String.format(Locale.ROOT, "%.2f\u00a0ms", port.frameMillis()),
                    Figures.rate(port.highestRate()),
                    port.firstUniverse() == port.lastUniverse()
                            ? String.valueOf(port.firstUniverse())
                            : port.firstUniverse() + " to " + port.lastUniverse(),
                    port.carries(report.subject().rate()) ? "fast enough" : "\u2717 too slow"));
        }
        html.table(rows);
        html.element(
                "p",
                String.format(
                        Locale.ROOT,
                        "As E1.31: %s, %.2f Mbit/s on the network. As DMX512: the fullest universe has %d slots, %s times a second at"
                                + " most; at %s a second a line carries %d.",
                        Counted.of(data.universes(), "universe"),
                        data.bitsPerSecond() / 1e6,
                        data.fullestSlots(),
                        Figures.rate(data.dmxRate()),
                        report.subject().rate(),
                        data.dmxSlots()));
    }

    private void parts() {
        if (report.parts().isEmpty()) {
            return;
        }
        html.element("h2", "What to buy and to cut");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("what", "which", "how much", "note"));
        for (PartLine part : report.parts()) {
            rows.add(List.of(part.group(), part.item(), amount(part), part.note()));
        }
        html.table(rows);
    }

    private static String amount(PartLine part) {
        return part.unit().equals("m")
                ? Figures.oneDigit(part.enough()) + "\u00a0m"
                : Math.round(part.enough()) + "\u00a0" + part.unit();
    }

    private void foot() {
        List<String> assumed = report.assumptions();
        if (!assumed.isEmpty()) {
            html.element("h2", "Not said by the display");
            html.element(
                    "p", "These figures are common practice and have no source; take those of your lights instead.");
            html.raw("<ul>\n");
            assumed.forEach(line -> html.element("li", line));
            html.raw("</ul>\n");
        }
        html.element("h2", "Caution");
        Caution.LINES.forEach(line -> html.element("p class=\"caution\"", line));
    }
}
