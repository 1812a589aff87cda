package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.preview.TimeLabel;

/** A report as one page for a browser, which needs nothing else. */
public final class ReportPage {
    private static final String STYLE = "body{font:16px/1.5 sans-serif;max-width:60em;margin:2em auto;padding:0 1em}"
            + "table{border-collapse:collapse}td,th{border:1px solid #999;padding:.2em .6em;text-align:left}"
            + "div{overflow-x:auto}";

    private final Report report;
    private final StringBuilder html = new StringBuilder();

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
        String title = escaped(report.subject().title());
        html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(title)
                .append("</title>\n<style>")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<h1>")
                .append(title)
                .append("</h1>\n");
        heading("Supplies");
        List<List<String>> supplies = new ArrayList<>();
        supplies.add(List.of("supply", "mean", "99 of 100 frames", "peak", "at", "allowed", "everything on", "energy"));
        report.power().supplies().forEach(supply -> supplies.add(supply(supply)));
        table(supplies);
        heading("Ports");
        List<List<String>> ports = new ArrayList<>();
        ports.add(List.of("port", "pixels", "peak", "least voltage", "data of a frame", "frames a second at most"));
        for (int i = 0; i < report.power().ports().size(); i++) {
            ports.add(port(report.power().ports().get(i), report.data().ports().get(i)));
        }
        table(ports);
        heading("What to buy and to cut");
        List<List<String>> parts = new ArrayList<>();
        parts.add(List.of("what", "which", "how much", "note"));
        report.parts()
                .forEach(part -> parts.add(List.of(
                        part.group(),
                        part.item(),
                        ReportNumbers.text(Math.ceil(10 * part.count() - 1e-9) / 10) + " " + part.unit(),
                        part.note())));
        table(parts);
        heading("Caution");
        Caution.LINES.forEach(line -> html.append("<p>").append(escaped(line)).append("</p>\n"));
        html.append("</body>\n</html>\n");
    }

    private List<String> supply(SupplyFigures figures) {
        return List.of(
                figures.supply().name(),
                amps(figures.amps().mean()),
                amps(figures.amps().p99()),
                amps(figures.amps().peak()),
                TimeLabel.of(report.secondsOf(figures.amps().peakFrame())),
                amps(figures.supply().allowedAmps()) + " of "
                        + amps(figures.supply().amps()),
                amps(figures.fullAmps()),
                String.format(Locale.ROOT, "%.2f Wh", figures.wattHours()));
    }

    private static List<String> port(PortFigures figures, PortTiming timing) {
        return List.of(
                figures.port().name(),
                String.valueOf(figures.port().pixelCount()),
                amps(figures.amps().peak()),
                figures.volts()
                        .map(volts -> String.format(Locale.ROOT, "%.2f V", volts.least()))
                        .orElse(""),
                String.format(Locale.ROOT, "%.1f ms", timing.frameMillis()),
                String.format(Locale.ROOT, "%.1f", timing.highestRate()));
    }

    private static String amps(double amps) {
        return String.format(Locale.ROOT, "%.2f A", amps);
    }

    private void heading(String text) {
        html.append("<h2>").append(text).append("</h2>\n");
    }

    private void table(List<List<String>> rows) {
        html.append("<div><table>\n");
        for (int i = 0; i < rows.size(); i++) {
            String tag = i == 0 ? "th" : "td";
            html.append("<tr>");
            rows.get(i)
                    .forEach(cell -> html.append('<')
                            .append(tag)
                            .append('>')
                            .append(escaped(cell))
                            .append("</")
                            .append(tag)
                            .append('>'));
            html.append("</tr>\n");
        }
        html.append("</table></div>\n");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
