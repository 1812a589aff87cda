package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.map.MapWriter;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.survey.FoundMap;
import org.duskloom.engine.text.Counted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom map}. */
@Command(
        name = "map",
        sortOptions = false,
        sortSynopsis = false,
        header = "Write where every pixel of a display hangs, as a pixel map.",
        description = {
            "",
            "The map is a CSV file with a row for each pixel in wiring order: its prop, number, place on the stage,"
                    + " parts and place in its shape's own axes. A timeline that names the map in place of the"
                    + " display, with the same groups beside it, renders the same frames.",
            "",
            "With --from it is the display as it was found: x, y and z are in the unit of the display, as in every map."
                    + " Measured pixels are where they were measured, those of a picture where the camera that took it"
                    + " sees them on the stage; the others are where survey places their prop. Depth that was not"
                    + " measured is as described: no picture shows it. What survey calls a slip is left out. Look at"
                    + " what survey says first.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom map garden/display.json -o map.csv",
            "  duskloom map garden/display.json -o -",
            "      To standard output.",
            "  duskloom map garden/display.json --from measured.csv -o map.csv",
            "      The pixels where they were measured."
        })
final class MapCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private DisplayOperand display;

    @Parameters(index = "1", arity = "0..1", hidden = true)
    private Path surplus;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.csv",
            required = true,
            description = "The map; - is standard output.")
    private Path output;

    @Option(
            names = "--from",
            paramLabel = "MEASURED.csv",
            description = "Where pixels were measured, as survey reads it: on the stage or, by locate, in a picture.")
    private Path measured;

    @Option(
            names = "--photo",
            description = "The measurements are places in a photo, though they do not say so by the column sure.")
    private boolean photo;

    @Mixin
    private TableOptions tables;

    @Option(names = "--force", description = "Replace the file that stands there, once the new one is complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    MapCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        if (surplus != null) {
            throw new MisuseException("'" + surplus + "' is one too many; if pixels were measured there, put --from"
                    + " before it, and if the map is to stand there, put -o before it");
        }
        if (photo && measured == null) {
            throw new MisuseException("--photo says what --from holds, which is not given");
        }
        if (measured != null) {
            MeasuredDisplay.refuseExchanged(display.file(), measured, "map %s --from %s -o " + output);
        }
        Optional<LoadedDisplay> loaded = display.load(streams);
        Optional<MeasuredDisplay> found = measured == null
                ? Optional.empty()
                : loaded.flatMap(read -> MeasuredDisplay.load(read, measured, photo, streams));
        if (loaded.isEmpty() || measured != null && found.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Optional<FoundMap> foundMap = found.map(MeasuredDisplay::foundMap);
        PixelMap map = foundMap.map(FoundMap::map).orElseGet(loaded.get()::map);
        StringBuilder csv = new StringBuilder();
        MapWriter.write(map, tables.style(), csv);
        if (OutputNames.isStandardOutput(output)) {
            streams.print(csv.toString(), StandardCharsets.UTF_8);
            return ExitCode.DONE;
        }
        loaded.get().refuseAsOutput(output);
        if (measured != null) {
            InputNames.refuseAsOutput(output, measured);
        }
        try (StagedFile file = StagedFile.open(output, OutputNames.ifExists(force))) {
            file.writeWhole(csv.toString());
        }
        streams.tell(output + ": " + Counted.of(map.pixelCount(), "pixel") + " in "
                + Counted.of(map.props().size(), "prop")
                + foundMap.map(MapCommand::shares).orElse(""));
        found.ifPresent(read -> read.tellDoubts(streams));
        return ExitCode.DONE;
    }

    private static String shares(FoundMap found) {
        return "; " + found.measuredPixels() + " as measured, " + (found.map().pixelCount() - found.measuredPixels())
                + " where survey puts them";
    }
}
