package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.map.MapWriter;
import org.duskloom.engine.text.Counted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom map garden/display.json -o map.csv",
            "  duskloom map garden/display.json -o -",
            "      To standard output."
        })
final class MapCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private DisplayOperand display;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.csv",
            required = true,
            description = "The map; - is standard output.")
    private Path output;

    @Option(names = "--force", description = "Replace the file that stands there, once the new one is complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    MapCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        Optional<LoadedDisplay> loaded = display.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        StringBuilder csv = new StringBuilder();
        MapWriter.write(loaded.get().map(), csv);
        if (OutputNames.isStandardOutput(output)) {
            streams.print(csv.toString());
            return ExitCode.DONE;
        }
        loaded.get().refuseAsOutput(output);
        byte[] bytes = csv.toString().getBytes(StandardCharsets.UTF_8);
        try (StagedFile file = StagedFile.open(output, OutputNames.ifExists(force))) {
            file.write(bytes, 0, bytes.length);
            file.finish();
        }
        streams.tell(output + ": " + Counted.of(loaded.get().map().pixelCount(), "pixel") + " in "
                + Counted.of(loaded.get().map().props().size(), "prop"));
        return ExitCode.DONE;
    }
}
