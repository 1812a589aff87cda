package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.sheet.SheetOptions;
import org.duskloom.engine.text.Counted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code duskloom sheet}. */
@Command(
        name = "sheet",
        sortOptions = false,
        sortSynopsis = false,
        header = "Draw sheets for building a display.",
        description = {
            "",
            "For every shape that the display uses: its numbered pixels, the way of the wire, the first pixel and the"
                    + " parts, seen from the front and from the back, as PNG to look at and as SVG. An SVG is"
                    + " life-size: print it at 100 %% and drill through it. A shape whose props have other"
                    + " scales is drawn once for each, and every sheet says for which. And the whole stage with the"
                    + " names of the props and how they are turned, on a grid, from the front and from behind;"
                    + " places.csv with the place, turn and first pixel of every prop; parts.csv with the parts of"
                    + " every pixel.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom sheet garden/display.json -o sheets",
            "  duskloom sheet garden/display.json -o sheets --hole 8 --force"
        })
final class SheetCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private DisplayOperand display;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR",
            required = true,
            description = "The folder for the sheets; made if it is missing.")
    private Path output;

    @Option(
            names = "--hole",
            paramLabel = "MM",
            defaultValue = "" + SheetOptions.USUAL_HOLE_MM,
            description = "Diameter of the hole for a pixel, in millimetres; " + SheetOptions.USUAL_HOLE_MM
                    + " unless written.")
    private double holeMm;

    @Mixin
    private TableOptions tables;

    @Option(names = "--force", description = "Replace files that stand there, once the new ones are complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    SheetCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        OutputNames.requireFolder("-o", output);
        SheetOptions options = options();
        Optional<LoadedDisplay> loaded = display.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        int files;
        try (SheetOutputs outputs =
                new SheetOutputs(loaded.get(), options, tables.style(), output, OutputNames.ifExists(force))) {
            ProblemPrinter.print(SheetWarnings.of(loaded.get(), outputs.shapes(), options), streams);
            files = outputs.write();
        }
        streams.tell(output + ": " + Counted.of(files, "file"));
        return ExitCode.DONE;
    }

    private SheetOptions options() {
        try {
            return new SheetOptions(holeMm);
        } catch (IllegalArgumentException e) {
            throw new MisuseException("--hole: " + e.getMessage());
        }
    }
}
