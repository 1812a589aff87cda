package org.duskloom.cli;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Layer;
import org.duskloom.engine.timeline.Timeline;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code duskloom check}. */
@Command(
        name = "check",
        sortOptions = false,
        sortSynopsis = false,
        header = "Read a show and list everything that is wrong with it.",
        description = {
            "",
            "Lists all problems of the timeline and of the pixels, each with its line and column. A show without"
                    + " errors is summed up; nothing is rendered.",
            ""
        },
        footer = {"", "Example:", "  duskloom check garden/show.json"})
final class CheckCommand implements Callable<Integer> {
    private final Streams streams;

    @Mixin
    private ShowOperand show;

    @Mixin
    private HelpOptions helpOptions;

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        Optional<LoadedShow> loaded = show.load(streams);
        if (loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        streams.print(summary(loaded.get()));
        return ExitCode.DONE;
    }

    private static String summary(LoadedShow loaded) {
        Timeline timeline = loaded.show().timeline();
        List<Cue> cues = timeline.layers().stream()
                .map(Layer::cues)
                .flatMap(List::stream)
                .toList();
        Collection<String> effects = new TreeSet<>();
        cues.forEach(cue -> effects.add(cue.effect().value()));
        StringBuilder text = new StringBuilder();
        line(text, "title", loaded.title());
        line(text, "pixels", loaded.plan().pixelCount());
        line(text, "props", loaded.show().map().props().size());
        line(text, "groups", loaded.show().groups().groupNames().size());
        line(text, "frames", loaded.plan().frameCount());
        line(text, "length", timeline.length());
        line(text, "rate", loaded.plan().rate());
        line(text, "layers", timeline.layers().size());
        line(text, "cues", cues.size());
        line(text, "effects", effects.isEmpty() ? "none" : String.join(", ", effects));
        return text.toString();
    }

    private static void line(StringBuilder text, String name, Object value) {
        text.append(name).append(" ".repeat(9 - name.length())).append(value).append(System.lineSeparator());
    }
}
