package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.meter.light.LightMeter;
import org.duskloom.engine.report.Caution;
import org.duskloom.engine.report.Concern;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.ReportJson;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code duskloom report}. */
@Command(
        name = "report",
        sortOptions = false,
        sortSynopsis = false,
        header = "Say what a show asks of its supplies, wires, data lines and those who look.",
        description = {
            "",
            "Looks at every frame of the show and tells: what each supply and port of the display gives on average and at"
                    + " most, when and in which cues; the least voltage along each line; how long the data of a frame take;"
                    + " how often it"
                    + " flashes, and how much of it is used; what to buy and to cut. What it can say of power depends on \"ports\", \"kinds\" and \"supplies\" of the"
                    + " display. Without -o, --json and --csv it is printed.",
            "",
            "These are estimates, no permission: for mains, fire, water and flashing light ask the local code and a"
                    + " qualified person.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom report garden/show.json",
            "      Everything in words.",
            "  duskloom report garden/show.json --what-if white --copper 40",
            "      The worst case: every light full on, and warm wires.",
            "  duskloom report garden/show.json -o report.html --csv report --force",
            "      A page to print and tables for a spreadsheet."
        })
final class ReportCommand implements Callable<Integer> {
    private static final double COLDEST = -50;
    private static final double WARMEST = 150;

    private static final double NEAREST = 0.5;
    private static final double FARTHEST = 10_000;
    private static final String WHITE = "white";

    private final Streams streams;

    @Mixin
    private ShowOperand show;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.html",
            description = "Write the report as a page for a browser.")
    private Path output;

    @Option(names = "--json", paramLabel = "FILE", description = "Write it for programs; - is standard output.")
    private Path json;

    @Option(
            names = "--csv",
            paramLabel = "DIR",
            description =
                    "Write tables for a spreadsheet into this folder. Its parts.csv says what to buy and to cut; that of"
                            + " 'sheet' is another, so give each a folder of its own.")
    private Path csv;

    @Option(names = "--cap", description = "Say too which \"cap\" keeps every supply within its share.")
    private boolean caps;

    @Option(
            names = "--what-if",
            paramLabel = "white",
            description = "Not the show, but every colour of every light full on, whatever \"cap\" says.")
    private String whatIf;

    @Option(
            names = "--copper",
            paramLabel = "C",
            defaultValue = "20",
            description = "How warm the wires are, in degrees Celsius; 20 unless written.")
    private double copper;

    @Option(
            names = "--seen-from",
            paramLabel = "M",
            description =
                    "From how many metres the nearest people see it. Then what flashes may fill a quarter of a field of ten"
                            + " degrees; else nothing may flash more than three times a second, however small.")
    private Double seenFrom;

    @Mixin
    private TableOptions tables;

    @Option(names = "--force", description = "Replace files that stand there, once the new ones are complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    ReportCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        check();
        Optional<LoadedShow> loaded = show.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        boolean jsonIsOut = json != null && OutputNames.isStandardOutput(json);
        try (ReportFiles files =
                new ReportFiles(loaded.get(), output, jsonIsOut ? null : json, csv, OutputNames.ifExists(force))) {
            ShowMeters meters = new ShowMeters(loaded.get(), copper, lightMeter(loaded.get()));
            Report report = whatIf == null ? meters.ofShow(streams) : meters.ofEverythingOn();
            files.write(report, tables.style());
            if (jsonIsOut) {
                streams.print(ReportJson.of(report), StandardCharsets.UTF_8);
            } else if (files.count() == 0) {
                streams.print(ReportWords.of(report, caps));
            } else if (caps) {
                streams.print(ReportWords.caps(report));
            }
            if (files.count() > 0) {
                streams.tell(Counted.of(files.count(), "file") + " of the report of " + show.file());
                brief(report).forEach(streams::tell);
            }
        }
        return ExitCode.DONE;
    }

    private static List<String> brief(Report report) {
        List<Concern> concerns = Concern.of(report);
        List<String> lines = new ArrayList<>();
        concerns.forEach(concern -> lines.add(concern.matter() + ": " + Quoted.plain(concern.text())));
        if (concerns.isEmpty()) {
            lines.add("nothing that could be looked at is beyond its limit; that is no guarantee");
        }
        report.power().supplies().stream()
                .filter(supply -> Concern.couldNotGive(report, supply))
                .forEach(supply -> lines.add("with all on: " + PowerWords.couldNotGive(supply) + "; it gives "
                        + Figure.amps(supply.supply().amps())));
        lines.add("caution: " + Caution.SHORT);
        return lines;
    }

    private LightMeter lightMeter(LoadedShow loaded) {
        if (seenFrom == null) {
            return LightMeter.ofAnyArea();
        }
        double millimetres = loaded.show()
                .display()
                .orElseThrow(() -> new MisuseException(
                        "--seen-from needs a display that says its \"units\", and this show is played on a map"))
                .units()
                .millimetres();
        return LightMeter.seenFrom(loaded.show().map().stage(), millimetres / 1000, seenFrom);
    }

    private void check() {
        if (seenFrom != null && !(seenFrom >= NEAREST && seenFrom <= FARTHEST)) {
            throw new MisuseException("--seen-from is " + ShortestDecimal.of(seenFrom) + "; allowed: "
                    + ShortestDecimal.of(NEAREST) + " to " + ShortestDecimal.of(FARTHEST) + " metres");
        }
        if (whatIf != null && !whatIf.equals(WHITE)) {
            throw new MisuseException("--what-if is " + Quoted.of(whatIf) + "; allowed: " + WHITE);
        }
        if (seenFrom != null && whatIf != null) {
            throw new MisuseException("--seen-from is for the flashes of the show, and --what-if looks at none");
        }
        if (!(copper >= COLDEST && copper <= WARMEST)) {
            throw new MisuseException("--copper is " + ShortestDecimal.of(copper) + "; allowed: "
                    + ShortestDecimal.of(COLDEST) + " to " + ShortestDecimal.of(WARMEST));
        }
        if (output != null && !output.toString().toLowerCase(Locale.ROOT).endsWith(".html")) {
            throw new MisuseException("-o " + output + ": the report is a page; give it a name that ends in .html");
        }
        if (csv == null && tables.areGiven()) {
            throw new MisuseException("--semicolons says how tables are written; --csv names their folder");
        }
        if (csv != null) {
            OutputNames.requireFolder("--csv", csv);
        }
    }
}
