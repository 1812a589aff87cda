package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Files of the project beside its code. */
final class Project {
    /** Where README.md stands; tests run in the folder of their module, which is beside it. */
    static final Path ROOT = Path.of("").toAbsolutePath().getParent();

    private Project() {}

    static Path file(String name) {
        return ROOT.resolve(name);
    }

    /** All shows of the demos, by their names from the root, in the order of these. */
    static List<String> demoShows() throws IOException {
        try (Stream<Path> files = Files.walk(file("demos"))) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .filter(Project::isShow)
                    .map(file -> ROOT.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    /** Copies a folder with all that is in it. */
    static void copy(String folder, Path into) throws IOException {
        try (Stream<Path> files = Files.walk(file(folder))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = into.resolve(ROOT.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    private static boolean isShow(Path file) {
        try {
            return Files.readString(file).contains("\"timeline/1\"");
        } catch (IOException fault) {
            throw new AssertionError(fault);
        }
    }
}
