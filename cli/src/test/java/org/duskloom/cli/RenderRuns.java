package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Runs of {@code render} that succeed, and what is there then. */
final class RenderRuns {
    private RenderRuns() {}

    /** Renders into something in a folder. */
    static void render(Path folder, Path show, String name, String... options) {
        Object[] arguments = Stream.concat(Stream.of("render", show, "-o", folder.resolve(name)), Stream.of(options))
                .toArray();
        Ran ran = Ran.with(arguments);
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    /** What is in a folder. */
    static List<String> namesIn(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        }
    }
}
