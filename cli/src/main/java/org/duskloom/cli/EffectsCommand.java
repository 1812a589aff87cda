package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.text.Counted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom effects}. */
@Command(
        name = "effects",
        sortOptions = false,
        sortSynopsis = false,
        header = "List the effects, or say everything about one.",
        description = {
            "",
            "Without a name: every effect that a cue may name, and what the audience sees of it. With a name: its"
                    + " formula and its settings, with unit, range and default.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom effects",
            "  duskloom effects sweep",
            "  duskloom effects sweep --json",
            "  duskloom effects --gallery effects"
        })
final class EffectsCommand implements Callable<Integer> {
    private final Streams streams;

    @Parameters(paramLabel = "NAME", arity = "0..1", completionCandidates = Names.class, description = "An effect.")
    private String name;

    @Option(names = "--json", description = "The same as JSON, for programs.")
    private boolean json;

    @Option(
            names = "--gallery",
            paramLabel = "DIR",
            description = "Write a page with a strip and the settings of every effect into a folder.")
    private Path gallery;

    @Option(names = "--force", description = "Replace the gallery that stands there.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    EffectsCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        EffectRegistry registry = EffectRegistry.installed();
        if (gallery != null) {
            drawGallery(registry);
            return ExitCode.DONE;
        }
        Optional<Effect> chosen = name == null ? Optional.empty() : Optional.of(find(registry));
        if (json) {
            String text = chosen.map(EffectJson::of).orElseGet(() -> EffectJson.ofAll(registry.effects()));
            streams.print(text, StandardCharsets.UTF_8);
        } else {
            streams.print(chosen.map(EffectText::of).orElseGet(() -> EffectText.list(registry.effects())));
        }
        return ExitCode.DONE;
    }

    /** What a shell completes. */
    static final class Names extends ArrayList<String> {
        private static final long serialVersionUID = 1L;

        Names() {
            super(EffectRegistry.installed().names());
        }
    }

    private void drawGallery(EffectRegistry registry) throws IOException, InterruptedException {
        if (name != null || json) {
            throw new MisuseException("--gallery is for all effects, without NAME and --json");
        }
        OutputNames.requireFolder("--gallery", gallery);
        try (Gallery page = new Gallery(OutputNames.ifExists(force))) {
            page.draw(gallery, registry, streams);
        }
        streams.tell(gallery + ": " + Counted.of(registry.effects().size(), "effect"));
    }

    private Effect find(EffectRegistry registry) {
        return registry.find(name)
                .orElseThrow(() -> new MisuseException(
                        "there is no effect '" + name + "'; " + NearestName.hint(name, registry.names())));
    }
}
