package org.duskloom.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.FoundMap;
import org.duskloom.engine.survey.MeasurementReader;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.PhotoAlignment;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.fit.Survey;

/**
 * A display whose measurements are fit to make a map of.
 *
 * @param display as described
 * @param result how it was found
 */
record MeasuredDisplay(LoadedDisplay display, SurveyResult result) {
    /**
     * Refuses a table in the place of the display, and the display in that of the table.
     *
     * @param right how it is typed, with the two as they should be
     */
    static void refuseExchanged(Path display, Path measured, String right) {
        if (ends(display, ".csv") && ends(measured, ".json")) {
            throw new MisuseException("the display and the measurements are exchanged; type: duskloom "
                    + String.format(right, measured, display));
        }
    }

    private static boolean ends(Path file, String ending) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
    }

    /** Reads measurements; lists all problems. */
    static Optional<Measurements> read(Optional<LoadedDisplay> display, Path file, boolean photo, Streams streams) {
        Problems problems = new Problems();
        boolean isFolder = Files.isDirectory(file);
        if (isFolder || PhotoFormat.isPicture(file)) {
            problems.error(
                    Location.ofFile(file.toString()),
                    "is a " + (isFolder ? "folder" : "picture") + "; a table of places is wanted here",
                    "'duskloom locate' finds the places of the lights in pictures, and writes the table");
            ProblemPrinter.print(problems, streams);
            return Optional.empty();
        }
        Optional<SourceText> source = SourceText.read(file, file.toString(), problems);
        Optional<Measurements> measurements = display.flatMap(
                read -> source.flatMap(text -> MeasurementReader.read(text, read.map(), photo, problems)));
        ProblemPrinter.print(problems, streams);
        return measurements;
    }

    /** Reads measurements and surveys them; nothing, and said why, if no map can be made of them. */
    static Optional<MeasuredDisplay> load(LoadedDisplay display, Path file, boolean photo, Streams streams) {
        return read(Optional.of(display), file, photo, streams)
                .map(measured -> Survey.compare(display.display(), measured, OptionalDouble.empty()))
                .filter(result -> isFit(result, file, streams))
                .map(result -> new MeasuredDisplay(display, result));
    }

    /** The map as it was found. */
    FoundMap foundMap() {
        return FoundMap.of(display.display(), result);
    }

    /** Tells of props whose pixels that were not measured may be anywhere. */
    void tellDoubts(Streams streams) {
        List<String> doubtful = result.findings().stream()
                .filter(finding ->
                        finding.verdict() == Verdict.UNEXPLAINED || finding.verdict() == Verdict.UNDETERMINED)
                .filter(finding ->
                        finding.measuredPixels() < finding.prop().prop().pixelCount())
                .map(Finding::prop)
                .map(prop -> prop.prop().name())
                .toList();
        if (!doubtful.isEmpty()) {
            streams.tell("not where they are described, in a way that survey cannot tell: "
                    + String.join(", ", doubtful) + "; of these only measured pixels are sure");
        }
    }

    private static boolean isFit(SurveyResult result, Path file, Streams streams) {
        Problems problems = new Problems();
        Location start = new Location(file.toString(), 1, 1);
        if (result.overall().isPresent()) {
            problems.error(
                    start,
                    "everything seems to be measured in another unit, from another side or in a photo",
                    "see what survey says of it, and mend that first");
        }
        int pixels = result.measured().pixelCount();
        result.photo()
                .filter(photo -> photo.isDoubtful(pixels))
                .map(PhotoAlignment::agreeingPixels)
                .ifPresent(agreeing -> problems.error(
                        start,
                        "from nowhere a camera would see the display so: " + agreeing + " of " + pixels
                                + " pixels agree",
                        "is it a picture of this display, from the front?"));
        ProblemPrinter.print(problems, streams);
        return problems.errorCount() == 0;
    }
}
