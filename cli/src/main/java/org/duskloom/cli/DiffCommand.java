package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.duskloom.engine.compare.Comparison;
import org.duskloom.engine.compare.DifferenceFrames;
import org.duskloom.engine.compare.Differences;
import org.duskloom.engine.compare.PairedFrames;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.FinishedFrames;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.format.RgbKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.ShownFrames;
import org.duskloom.engine.preview.TimeStrip;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.InputFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom diff}. */
@Command(
        name = "diff",
        sortOptions = false,
        sortSynopsis = false,
        header = "Say in what two renderings of a show differ.",
        description = {
            "",
            "Compares two folders that 'render' wrote with rgb, or shows, which are rendered for it: frames of the same"
                    + " number, and props of the same name. Says which frames, times and props differ and by how many of"
                    + " the 255 codes of a colour. Ends with the exit code 0 if they are the same, and 1 if not.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom diff out/before out/after",
            "      What a change has changed.",
            "  duskloom diff out/before garden/show.json -o diff.png",
            "      The show as it is now, with a picture: black is what stayed the same."
        })
final class DiffCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(index = "0", paramLabel = "A", description = "A folder with frames.rgb and frames.json, or a timeline.")
    private Path first;

    @Parameters(index = "1", paramLabel = "B", description = "The other one.")
    private Path second;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.png",
            description = "Draw the differences: a row for each pixel, a column for each frame; - is standard output.")
    private Path output;

    @Option(names = "--json", description = "Print the differences as JSON, for programs.")
    private boolean json;

    @Option(names = "--force", description = "Replace the picture that stands there, once the new one is complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    DiffCommand(Streams streams) {
        this.streams = streams;
    }

    /** One of the two, and the files that it was read from. */
    private record Side(FrameSource frames, List<Path> inputs) {}

    @Override
    public Integer call() throws IOException, InterruptedException {
        requirePicture();
        Problems problems = new Problems();
        Optional<Side> a = side(first, problems);
        Optional<Side> b = side(second, problems);
        ProblemPrinter.print(problems, streams);
        if (a.isEmpty() || b.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        return compare(a.get(), b.get());
    }

    private int compare(Side a, Side b) throws IOException, InterruptedException {
        RunInfo info = a.frames().info();
        Comparison comparison = Comparison.of(info, b.frames().info());
        Differences differences = new Differences(comparison, info.pixelCount());
        PairedFrames pair = new PairedFrames(a.frames(), b.frames(), comparison.frames());
        if (!comparison.frames().isEmpty()) {
            List<Path> inputs = new ArrayList<>(a.inputs());
            inputs.addAll(b.inputs());
            // Begun before the work, so that what cannot be written is known by then.
            try (StagedFile picture = output == null ? null : picture(inputs)) {
                new Rendering(pair, FrameList.of(comparison.frames())).into(List.of(differences), streams);
                if (picture != null) {
                    draw(picture, pair, comparison, info);
                }
            }
        } else if (output != null) {
            streams.tell("no picture was drawn: there are no frames that could be compared");
        }
        DifferenceReport report =
                new DifferenceReport(first.toString(), second.toString(), info, comparison, differences);
        if (json) {
            streams.print(report.json(), StandardCharsets.UTF_8);
        } else if (output == null || !OutputNames.isStandardOutput(output)) {
            streams.print(report.text());
        }
        return report.isSame() ? ExitCode.DONE : ExitCode.DIFFERENT;
    }

    private Optional<Side> side(Path operand, Problems problems) {
        if (Files.isDirectory(operand)) {
            return FinishedFrames.in(operand, problems)
                    .map(frames -> new Side(
                            frames, List.of(operand.resolve(RgbKind.FILE), operand.resolve(FrameManifest.FILE))));
        }
        if (isOfFrames(operand)) {
            Path parent = operand.getParent();
            problems.error(
                    Location.ofFile(operand.toString()),
                    "is one file of rendered frames",
                    "name the folder, which holds " + RgbKind.FILE + " and " + FrameManifest.FILE + ": "
                            + (parent == null ? "." : parent));
            return Optional.empty();
        }
        return LoadedShow.load(operand, problems)
                .map(show -> new Side(
                        show.frames(),
                        show.show().files().inputs().stream()
                                .map(InputFile::path)
                                .toList()));
    }

    /** Whether it is one of the files in such a folder. */
    private static boolean isOfFrames(Path operand) {
        Path name = operand.getFileName();
        return name != null
                && (name.toString().equals(FrameManifest.FILE)
                        || name.toString().equals(RgbKind.FILE))
                && Files.isRegularFile(operand)
                && Files.isRegularFile(operand.resolveSibling(FrameManifest.FILE));
    }

    private void requirePicture() {
        if (output == null) {
            return;
        }
        if (OutputNames.isStandardOutput(output) && json) {
            throw new MisuseException("--json and -o - both write to standard output; give the picture a name");
        }
        if (!OutputNames.isStandardOutput(output)
                && !output.toString().toLowerCase(Locale.ROOT).endsWith(".png")) {
            throw new MisuseException("-o " + output + ": the picture is a PNG; give it a name that ends in .png");
        }
    }

    private StagedFile picture(List<Path> inputs) throws IOException {
        if (OutputNames.isStandardOutput(output)) {
            return StagedFile.standardOutput();
        }
        try {
            StagedFile.refuseInput(output, inputs);
        } catch (OutputRefusedException isInput) {
            throw new MisuseException(isInput.getMessage());
        }
        return StagedFile.open(output, OutputNames.ifExists(force));
    }

    private void draw(StagedFile file, PairedFrames pair, Comparison comparison, RunInfo info)
            throws IOException, InterruptedException {
        String title = first + " and " + second + ": differences";
        double[] nowhere = new double[comparison.pixelCount()];
        PreviewScene scene = new PreviewScene(title, nowhere, nowhere, comparison.spans(), info.rate()::secondsOf);
        FrameList frames = FrameList.of(comparison.frames());
        long together = ShownFrames.framesPerColumn(scene, frames, ShownFrames.USUAL_COLUMNS);
        DifferenceFrames light = new DifferenceFrames(pair, comparison, info.pixelCount(), title, together);
        FrameList shown = FrameList.of(ShownFrames.everyNth(frames, together));
        try (TimeStrip strip =
                new TimeStrip(file, scene, frames.first(), frames.last() + 1, together, OptionalInt.empty())) {
            new Rendering(light, shown).into(List.of(strip), streams);
        }
    }
}
