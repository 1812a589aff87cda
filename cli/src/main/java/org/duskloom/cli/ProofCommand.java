package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.duskloom.engine.format.FrameOutputs;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.proof.Proof;
import org.duskloom.engine.proof.ProofFrames;
import org.duskloom.engine.text.Counted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code duskloom proof}. */
@Command(
        name = "proof",
        sortOptions = false,
        sortSynopsis = false,
        header = "Render a test show that proves wiring and orientation on site.",
        description = {
            "",
            "Plays first pixels, a running index, the stage's up against each shape's own up, and every prop, part and"
                    + " group in turn. Writes frames.rgb and frames.json, strip.png with every step and its caption,"
                    + " and steps.txt, which says what to see and when.",
            ""
        },
        footer = {
            "",
            "Example:",
            "  duskloom proof garden/display.json -o proof",
            "      Play proof/frames.rgb on site at 20 frames a second, steps.txt in hand."
        })
final class ProofCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private DisplayOperand display;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "DIR",
            required = true,
            description = "The folder for the files; made if it is missing.")
    private Path output;

    @Option(names = "--force", description = "Replace files that stand there, once the new ones are complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    ProofCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        OutputNames.requireFolder("-o", output);
        Optional<LoadedDisplay> loaded = display.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Proof proof = Proof.of(loaded.get().groups());
        render(loaded.get(), proof);
        streams.tell(output + ": " + Counted.of(proof.steps().size(), "step") + ", "
                + Counted.of(proof.frameCount(), "frame"));
        return ExitCode.DONE;
    }

    private void render(LoadedDisplay loaded, Proof proof) throws IOException, InterruptedException {
        String title = "Proof of " + loaded.file().getFileName();
        ProofFrames source = new ProofFrames(proof, title, FramePixels.of(loaded.map()));
        Rendering rendering = new Rendering(source, source.info().frames());
        List<OutputKind> kinds =
                Stream.of("rgb", "steps", "strip").map(OutputKinds.ALL::kind).toList();
        OutputFolder folder = new OutputFolder(output, OutputNames.ifExists(force), loaded::refuseAsOutput);
        try (FrameOutputs outputs = new FrameOutputs(folder, kinds, rendering.info(), loaded.origin())) {
            rendering.into(outputs.sinks(), streams);
            outputs.publish();
        }
    }
}
