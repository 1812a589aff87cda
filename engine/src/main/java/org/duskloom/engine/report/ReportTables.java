package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.document.CsvText;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.meter.PortFigures;
import org.duskloom.engine.meter.SupplyFigures;
import org.duskloom.engine.meter.VoltFigures;
import org.duskloom.engine.wire.Lead;
import org.duskloom.engine.wire.Link;

/** A report as tables for a spreadsheet: CSV with a header row, lines end with LF. */
public final class ReportTables {
    /** What to buy and to cut. */
    public static final String PARTS = "parts.csv";

    /** The first line of {@link #PARTS}, by which it is told from another table of that name. */
    public static final String PARTS_HEADER = "group,item,count,unit,note";

    /** The names of all files. */
    public static final List<String> NAMES = List.of(
            "supplies.csv",
            "ports.csv",
            "feeds.csv",
            "volts.csv",
            "current.csv",
            "flashes.csv",
            "use.csv",
            "cues.csv",
            PARTS,
            "caution.txt");

    private final Report report;
    private final CsvStyle style;
    private final Map<String, String> tables = new LinkedHashMap<>();

    private ReportTables(Report report, CsvStyle style) {
        this.report = report;
        this.style = style;
    }

    /**
     * The texts of the files by their names.
     *
     * @param map names the pixels of lines
     * @param style what stands between cells and in numbers
     */
    public static Map<String, String> of(Report report, PixelMap map, CsvStyle style) {
        ReportTables made = new ReportTables(report, style);
        made.addSupplies();
        made.addPorts();
        made.addFeeds();
        made.addPixels(map);
        made.addCurrent();
        made.addFlashes();
        made.addUse();
        made.addCues();
        made.addParts();
        made.tables.put("caution.txt", String.join("\n", Caution.LINES) + "\n");
        return made.tables;
    }

    private void addSupplies() {
        CsvText rows = new CsvText(
                style,
                "supply,volts,amps,share,allowed_amps,mean_amps,p99_amps,peak_amps,peak_at,"
                        + "peak_cues,margin_amps,everything_on_amps,watt_hours");
        for (SupplyFigures figures : report.power().supplies()) {
            rows.row(
                    figures.supply().name(),
                    number(figures.supply().volts()),
                    number(figures.supply().amps()),
                    number(figures.supply().share()),
                    number(figures.supply().allowedAmps()),
                    number(figures.amps().mean()),
                    number(figures.amps().p99()),
                    number(figures.amps().peak()),
                    at(figures.amps().peakFrame()),
                    String.join("; ", report.cues().at(figures.amps().peakFrame())),
                    number(figures.marginAmps()),
                    number(figures.fullAmps()),
                    number(figures.wattHours()));
        }
        tables.put("supplies.csv", rows.toString());
    }

    private void addPorts() {
        CsvText rows = new CsvText(
                style,
                "port,supply,kind,pixels,mean_amps,p99_amps,peak_amps,peak_at,"
                        + "everything_on_amps,least_volts,least_pixel,least_at,too_low,frame_ms,highest_rate,first_universe,"
                        + "last_universe");
        for (int i = 0; i < report.power().ports().size(); i++) {
            PortFigures figures = report.power().ports().get(i);
            PortTiming timing = report.data().ports().get(i);
            List<String> cells = new ArrayList<>(List.of(
                    figures.port().name(),
                    report.power()
                            .supplyOf(figures.port())
                            .map(supply -> supply.supply().name())
                            .orElse(""),
                    figures.port().kind().map(kind -> kind.name()).orElse(""),
                    String.valueOf(figures.port().pixelCount()),
                    number(figures.amps().mean()),
                    number(figures.amps().p99()),
                    number(figures.amps().peak()),
                    at(figures.amps().peakFrame()),
                    number(figures.fullAmps())));
            cells.addAll(figures.volts().map(this::voltage).orElse(List.of("", "", "", "")));
            cells.addAll(List.of(
                    number(timing.frameMillis()),
                    number(timing.highestRate()),
                    String.valueOf(timing.firstUniverse()),
                    String.valueOf(timing.lastUniverse())));
            rows.row(cells.toArray(String[]::new));
        }
        tables.put("ports.csv", rows.toString());
    }

    private List<String> voltage(VoltFigures volts) {
        return List.of(
                number(volts.least()),
                String.valueOf(volts.leastPixel() + 1),
                at(volts.leastFrame()),
                volts.promised().isPresent() ? String.valueOf(volts.tooLowCount()) : "");
    }

    private void addFeeds() {
        CsvText rows = new CsvText(
                style, "port,pixel,wire,metres,peak_amps,peak_watts,everything_on_amps,everything_on_watts");
        FeedLine.of(report).forEach(feed -> addFeed(rows, feed));
        tables.put("feeds.csv", rows.toString());
    }

    private void addFeed(CsvText rows, FeedLine line) {
        Optional<Lead> lead = line.feed().lead();
        rows.row(
                line.feed().port(),
                String.valueOf(line.feed().pixel() + 1),
                lead.map(Lead::conductor).map(wire -> wire.name()).orElse(""),
                lead.map(Lead::metres).map(this::number).orElse(""),
                line.figures().map(flow -> number(flow.peakAmps())).orElse(""),
                line.figures()
                        .map(flow -> number(flow.peakAmps() * line.volts()))
                        .orElse(""),
                line.figures().map(flow -> number(flow.fullAmps())).orElse(""),
                line.figures()
                        .map(flow -> number(flow.fullAmps() * line.volts()))
                        .orElse(""));
    }

    private void addPixels(PixelMap map) {
        CsvText rows = new CsvText(style, "port,place,prop,pixel,least_volts,least_at,too_low");
        for (PortFigures figures : report.power().ports()) {
            int[] pixels = figures.port().pixels();
            figures.volts().ifPresent(volts -> {
                for (int i = 0; i < pixels.length; i++) {
                    Prop prop = pixels[i] == Link.DARK ? null : map.props().get(map.propIndexOf(pixels[i]));
                    rows.row(
                            figures.port().name(),
                            String.valueOf(i + 1),
                            prop == null ? "" : prop.name(),
                            prop == null ? "" : String.valueOf(pixels[i] - prop.firstPixel() + 1),
                            number(volts.leastByPixel()[i]),
                            at(volts.leastFrameByPixel()[i]),
                            volts.isTooLow(i) ? "yes" : "");
                }
            });
        }
        tables.put("volts.csv", rows.toString());
    }

    /** The peak of every stretch of the show, by supply. */
    private void addCurrent() {
        CsvText rows = new CsvText(style, "supply,from,to,peak_amps");
        for (SupplyFigures figures : report.power().supplies()) {
            double[] columns = figures.amps().columns();
            double step = report.subject().seconds() / columns.length;
            for (int i = 0; i < columns.length; i++) {
                rows.row(figures.supply().name(), number(i * step), number((i + 1) * step), number(columns[i]));
            }
        }
        tables.put("current.csv", rows.toString());
    }

    private void addFlashes() {
        CsvText rows = new CsvText(style, "prop,changes_of_light,changes_of_red,pixels_over");
        report.light()
                .ifPresent(light -> light.flashes()
                        .props()
                        .forEach(prop -> rows.row(
                                prop.prop(),
                                String.valueOf(prop.general().most()),
                                String.valueOf(prop.red().most()),
                                String.valueOf(prop.pixelsOver()))));
        tables.put("flashes.csv", rows.toString());
    }

    private void addUse() {
        CsvText rows = new CsvText(style, "prop,pixels,dark_share,mean_light,never_lit");
        report.light()
                .ifPresent(light -> light.use()
                        .props()
                        .forEach(prop -> rows.row(
                                prop.prop(),
                                String.valueOf(prop.pixelCount()),
                                number(prop.darkShare()),
                                number(prop.meanLight()),
                                String.valueOf(prop.neverLit().length))));
        tables.put("use.csv", rows.toString());
    }

    private void addCues() {
        CsvText rows = new CsvText(style, "layer,cue,mask,mean_light,share");
        report.light()
                .ifPresent(light -> light.cues()
                        .forEach(cue -> rows.row(
                                cue.layer(),
                                cue.cue(),
                                cue.mask() ? "yes" : "",
                                number(cue.meanLight()),
                                number(cue.share()))));
        tables.put("cues.csv", rows.toString());
    }

    private void addParts() {
        CsvText rows = new CsvText(style, PARTS_HEADER);
        for (PartLine part : report.parts()) {
            rows.row(part.group(), part.item(), number(part.count()), part.unit(), part.note());
        }
        tables.put(PARTS, rows.toString());
    }

    private String at(long frame) {
        return number(report.secondsOf(frame));
    }

    private String number(double value) {
        return style.number(ReportNumbers.text(value));
    }
}
