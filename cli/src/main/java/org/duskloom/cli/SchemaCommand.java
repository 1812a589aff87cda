package org.duskloom.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.schema.DocumentSchema;
import org.duskloom.engine.text.Quoted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

    @Parameters(
            paramLabel = "KIND",
            completionCandidates = Kinds.class,
            description = "What the schema is of: timeline, display or manifest.")
    private String kind;

    @Mixin
    private TextOutput output;

    @Mixin
    private HelpOptions helpOptions;

    SchemaCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        DocumentSchema schema = chosen();
        String json = JsonText.ascii(schema.json(EffectRegistry.installed()));
        output.write(json, "the schema of a " + schema.word(), streams);
        return ExitCode.DONE;
    }

    /** What a shell completes. */
    static final class Kinds extends ArrayList<String> {
        private static final long serialVersionUID = 1L;

        Kinds() {
            super(words());
        }
    }

    private static List<String> words() {
        return Arrays.stream(DocumentSchema.values()).map(DocumentSchema::word).toList();
    }

    private DocumentSchema chosen() {
        return Arrays.stream(DocumentSchema.values())
                .filter(each -> each.word().equals(kind))
                .findFirst()
                .orElseThrow(() -> new MisuseException(
                        "there is no schema of " + Quoted.of(kind) + "; " + NearestName.hint(kind, words())));
    }
}
