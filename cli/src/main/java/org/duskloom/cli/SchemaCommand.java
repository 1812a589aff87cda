package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.schema.DocumentSchema;
import org.duskloom.engine.text.Quoted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom schema}. */
@Command(
        name = "schema",
        sortOptions = false,
        sortSynopsis = false,
        header = "Write what a file may hold as JSON Schema, for editors.",
        description = {
            "",
            "An editor that knows JSON Schema (draft-07) completes names of fields, effects and settings while you type, says"
                    + " what they mean, and marks what duskloom would refuse. Tell it where the schema is in the first"
                    + " field of the file, as seen from there: \"$schema\": \"timeline.schema.json\". duskloom passes"
                    + " over that field.",
            "",
            "KIND is timeline (a show), display, or manifest (the frames.json beside finished frames).",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom schema timeline -o garden/timeline.schema.json",
            "  duskloom schema display"
        })
final class SchemaCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(paramLabel = "KIND", description = "What the schema is of: timeline, display or manifest.")
    private String kind;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.json",
            description = "The file; without it, or with -, the schema goes to standard output.")
    private Path output;

    @Option(names = "--force", description = "Replace the file that stands there, once the new one is complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    SchemaCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        String json = chosen().json(EffectRegistry.installed());
        if (output == null || OutputNames.isStandardOutput(output)) {
            streams.print(JsonText.ascii(json), StandardCharsets.UTF_8);
            return ExitCode.DONE;
        }
        byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
        try (StagedFile file = StagedFile.open(output, OutputNames.ifExists(force))) {
            file.write(bytes, 0, bytes.length);
            file.finish();
        }
        streams.tell(output + ": the schema of a " + chosen().word());
        return ExitCode.DONE;
    }

    private DocumentSchema chosen() {
        return Arrays.stream(DocumentSchema.values())
                .filter(each -> each.word().equals(kind))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> words = Arrays.stream(DocumentSchema.values())
                            .map(DocumentSchema::word)
                            .toList();
                    return new MisuseException(
                            "there is no schema of " + Quoted.of(kind) + "; " + NearestName.hint(kind, words));
                });
    }
}
