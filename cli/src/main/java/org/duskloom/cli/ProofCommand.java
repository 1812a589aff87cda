package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.proof.Proof;
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
    public Integer call() throws IOException {
        OutputNames.requireFolder("-o", output);
        Optional<LoadedDisplay> loaded = display.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Proof proof = Proof.of(loaded.get().groups());
        IfExists ifExists = OutputNames.ifExists(force);
        try (ProofOutputs outputs = new ProofOutputs(loaded.get(), proof, output, ifExists)) {
            outputs.render();
        }
        streams.tell(output + ": " + Words.counted(proof.steps().size(), "step") + ", "
                + Words.counted(proof.frameCount(), "frame"));
        return ExitCode.DONE;
    }
}
