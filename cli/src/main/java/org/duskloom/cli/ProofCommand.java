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
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.proof.Proof;
import org.duskloom.engine.proof.ProofFrames;
import org.duskloom.engine.proof.ProofStep;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
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
            "Plays first pixels, a running index, the stage's up against each shape's own up, every prop, part and"
                    + " group in turn, and red, green, blue and white for the order of the colours. Writes frames.rgb and frames.json, strip.png with every step and its caption,"
                    + " and steps.txt, which says what to see and when.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom proof garden/display.json -o proof",
            "      Play proof/frames.rgb on site at 20 frames a second, steps.txt in hand.",
            "  duskloom proof garden/display.json -o held --step \"colour red\" --only fence",
            "      The fence in red, for as long as it is played."
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

    @Option(
            names = "--step",
            paramLabel = "NAME",
            description = "Only the step of that name, such as \"stage up\", to hold it: play it in a loop.")
    private String step;

    @Option(
            names = "--only",
            paramLabel = "ADDRESS",
            description = "Only this prop, part or group is lit; may be given several times.")
    private List<String> only = List.of();

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
        Proof proof = chosen(Proof.of(loaded.get().groups()), loaded.get().groups());
        render(loaded.get(), proof);
        streams.tell(output + ": " + Counted.of(proof.steps().size(), "step") + ", "
                + Counted.of(proof.frameCount(), "frame"));
        return ExitCode.DONE;
    }

    private Proof chosen(Proof all, GroupTree groups) {
        Proof lit = only.isEmpty() ? all : all.only(TypedAddresses.pixels("--only", only, groups));
        if (step == null) {
            return lit;
        }
        List<String> names = lit.steps().stream().map(ProofStep::caption).toList();
        return lit.step(step).orElseThrow(() -> {
            String hint = NearestName.hint(step, names);
            return new MisuseException(
                    "--step: there is no step " + Quoted.of(step) + (hint.isEmpty() ? "" : "; " + hint));
        });
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
