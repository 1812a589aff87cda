package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
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
        header = "Say what a show asks of its supplies, wires and data lines.",
        description = {
            "",
            "Looks at every frame of the show and tells: what each supply and port of the display gives on average and at"
                    + " most, when and in which cues; the least voltage along each line; how long the data of a frame take;"
                    + " what to buy and to cut. What it can say depends on \"ports\", \"kinds\" and \"supplies\" of the"
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
            ShowMeters meters = new ShowMeters(loaded.get(), copper);
            Report report = whatIf == null ? meters.ofShow(streams) : meters.ofEverythingOn();
            files.write(report);
            if (jsonIsOut) {
                streams.print(ReportJson.of(report), StandardCharsets.UTF_8);
            } else if (files.count() == 0 || caps) {
                streams.print(ReportWords.of(report, caps));
            }
            if (files.count() > 0) {
                streams.tell(Counted.of(files.count(), "file") + " of the report of " + show.file());
                ReportWords.brief(report).forEach(streams::tell);
            }
        }
        return ExitCode.DONE;
    }

    private void check() {
        if (whatIf != null && !whatIf.equals(WHITE)) {
            throw new MisuseException("--what-if is " + Quoted.of(whatIf) + "; allowed: " + WHITE);
        }
        if (!(copper >= COLDEST && copper <= WARMEST)) {
            throw new MisuseException("--copper is " + ShortestDecimal.of(copper) + "; allowed: "
                    + ShortestDecimal.of(COLDEST) + " to " + ShortestDecimal.of(WARMEST));
        }
        if (output != null && !output.toString().toLowerCase(Locale.ROOT).endsWith(".html")) {
            throw new MisuseException("-o " + output + ": the report is a page; give it a name that ends in .html");
        }
        if (csv != null) {
            OutputNames.requireFolder("--csv", csv);
        }
    }
}
