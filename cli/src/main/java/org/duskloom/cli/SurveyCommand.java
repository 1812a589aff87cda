package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.fit.Survey;
import org.duskloom.engine.survey.text.SurveyReport;
import org.duskloom.engine.text.ShortestDecimal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom survey}. */
@Command(
        name = "survey",
        sortOptions = false,
        sortSynopsis = false,
        header = "Compare a display as described with pixels as measured.",
        description = {
            "",
            "Tells of every measured prop whether it hangs and is wired as described, or what differs: moved, turned,"
                    + " mirrored, larger, wired from the other end or from another pixel, exchanged with another prop, or"
                    + " moved together with others. Where several readings fit, all are told, with the pixel to measure"
                    + " that decides. Ends with entries to paste into the display. Where everything seems to be measured"
                    + " in another unit, from behind or in a photo, that is said first, and nothing is to be pasted."
                    + " Differences are a result: the exit code is 0.",
            "",
            "The measurements are CSV with the columns prop, pixel, x, y and perhaps z, a row for each measured pixel, in"
                    + " the unit of the display. The CSV that map writes may be the template: the columns part, ownx,"
                    + " owny and ownz are ignored; take out the rows that were not measured, and z unless depth was."
                    + " Six pixels of a prop that are not on one line mostly do.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom survey garden/display.json measured.csv",
            "  duskloom survey garden/display.json measured.csv --tolerance 20",
            "  duskloom survey garden/display.json from-photo.csv --photo"
        })
final class SurveyCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private DisplayOperand display;

    @Parameters(paramLabel = "MEASURED.csv", description = "Where pixels were measured.")
    private Path measured;

    @Option(
            names = "--photo",
            description = "The measurements are places in a photo of the whole display, from the front or aside: where"
                    + " it was taken from, and how the lens bends, is found first, from what most pixels agree with and"
                    + " the depth that is described. Known without this by the column sure that locate writes.")
    private boolean photo;

    @Option(
            names = "--tolerance",
            paramLabel = "LENGTH",
            description = "How far off a good measurement may be, in the unit of the display. Unless written, it is"
                    + " worked out from the measurements.")
    private Double tolerance;

    @Mixin
    private HelpOptions helpOptions;

    SurveyCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        OptionalDouble allowed = tolerance();
        MeasuredDisplay.refuseExchanged(display.file(), measured, "survey %s %s");
        Optional<LoadedDisplay> loaded = display.load(streams);
        Optional<Measurements> measurements = MeasuredDisplay.read(loaded, measured, photo, streams);
        if (measurements.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        streams.print(report(loaded.get(), measurements.get(), allowed));
        return ExitCode.DONE;
    }

    private String report(LoadedDisplay loaded, Measurements measurements, OptionalDouble allowed) {
        return SurveyReport.of(Survey.compare(loaded.display(), measurements, allowed))
                .replace("\n", System.lineSeparator());
    }

    private OptionalDouble tolerance() {
        if (tolerance == null) {
            return OptionalDouble.empty();
        }
        if (!(tolerance > 0) || !Double.isFinite(tolerance)) {
            throw new MisuseException(
                    "--tolerance is " + ShortestDecimal.of(tolerance) + "; a length above 0 is needed");
        }
        return OptionalDouble.of(tolerance);
    }
}
