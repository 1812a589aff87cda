package org.duskloom.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for the source files of all modules, whatever is in them. */
class SourceTreeTest {
    /** The formatter keeps code within 120 columns, and leaves comments as they are written. */
    private static final int WIDEST_COMMENT = 120;

    private static final List<String> NEAR_A_TYPE = List.of("package-info.java", "module-info.java");

    /** Whoever reads a name knows which type is meant. */
    @Test
    void typesInDifferentPackagesDoNotShareASimpleName() throws IOException {
        Map<String, List<Path>> byName = new TreeMap<>();
        for (String module : List.of("engine", "effects", "cli")) {
            for (Path file : sources(module, "main")) {
                byName.computeIfAbsent(file.getFileName().toString(), name -> new ArrayList<>())
                        .add(file);
            }
        }
        assertThat(byName).containsKeys("Plan.java", "Effect.java", "Main.java");
        byName.keySet().removeAll(NEAR_A_TYPE);
        byName.values().removeIf(files -> files.size() == 1);
        assertThat(byName).isEmpty();
    }

    /** Each package says its purpose, its units and its place in the flow. */
    @ParameterizedTest
    @ValueSource(strings = {"engine", "effects", "cli"})
    void everyPackageSaysWhatItIsFor(String module) throws IOException {
        List<Path> bare = sources(module, "main").stream()
                .filter(file -> !file.endsWith("module-info.java"))
                .map(Path::getParent)
                .distinct()
                .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                .toList();
        assertThat(bare).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"engine", "effects", "cli"})
    void commentsAreNoWiderThanAScreen(String module) throws IOException {
        List<String> wide = new ArrayList<>();
        for (String kind : List.of("main", "test")) {
            for (Path file : sources(module, kind)) {
                List<String> lines = Files.readAllLines(file);
                for (int i = 0; i < lines.size(); i++) {
                    if (isComment(lines.get(i)) && lines.get(i).length() > WIDEST_COMMENT) {
                        wide.add(file + ":" + (i + 1));
                    }
                }
            }
        }
        assertThat(wide).isEmpty();
    }

    /** {@code Counted} makes plurals; made by hand, some of them end as "1 pixels". */
    @ParameterizedTest
    @ValueSource(strings = {"engine", "effects", "cli"})
    void pluralsAreMadeInOnePlace(String module) throws IOException {
        Pattern byHand = Pattern.compile("[=!]= 1\\s*\\?\\s*\"(1 |s?\"\\s*:\\s*\"s?\")");
        assertThat(byHand.matcher("count == 1 ? \"1 cell\" : count + \" cells\"")
                        .find())
                .isTrue();
        List<Path> found = new ArrayList<>();
        for (Path file : sources(module, "main")) {
            if (byHand.matcher(Files.readString(file)).find()) {
                found.add(file.getFileName());
            }
        }
        found.remove(Path.of("Counted.java"));
        assertThat(found).isEmpty();
    }

    /** A file has the same bytes on every system, so its lines end in a line feed, whatever those of the system do. */
    @ParameterizedTest
    @ValueSource(strings = {"engine", "effects"})
    void linesDoNotEndAsTheSystemLikes(String module) throws IOException {
        // In the words of java.util.Formatter this is the line end of the system.
        String ofTheSystem = "%" + "n";
        List<Path> found = new ArrayList<>();
        for (Path file : sources(module, "main")) {
            if (Files.readString(file).contains(ofTheSystem)) {
                found.add(file.getFileName());
            }
        }
        assertThat(found).isEmpty();
    }

    /** What is read at one sitting: small files, and methods that are seen at once. */
    @ParameterizedTest
    @ValueSource(strings = {"engine", "effects", "cli"})
    void filesAndMethodsStaySmall(String module) throws IOException {
        List<Path> files = sources(module, "main");
        List<Path> large = new ArrayList<>();
        int small = 0;
        for (Path file : files) {
            int lines = Files.readAllLines(file).size();
            small += lines <= 150 ? 1 : 0;
            if (lines > 400) {
                large.add(file);
            }
        }
        assertThat(large).as("files of more than 400 lines").hasSizeLessThanOrEqualTo(1);
        assertThat(small).as("files of at most 150 lines").isGreaterThan(files.size() * 3 / 4);

        Map<String, Integer> methods = MethodLengths.of(files);
        assertThat(methods).hasSizeGreaterThan(files.size());
        long short20 = methods.values().stream().filter(lines -> lines <= 20).count();
        assertThat(short20).as("methods of at most 20 lines").isGreaterThan(methods.size() * 19L / 20);
        methods.values().removeIf(lines -> lines <= 40);
        assertThat(methods).as("methods of more than 40 lines").isEmpty();
    }

    @Test
    void methodsAreMeasuredBetweenTheirBrackets(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("A.java"), """
                class A {
                    A() {}

                    abstract int none();

                    int two(
                            int a) {
                        Runnable inner = new Runnable() { public void run() {
                        } };
                        return a;
                    }
                }
                """);
        assertThat(MethodLengths.of(List.of(file)))
                .containsExactlyInAnyOrderEntriesOf(Map.of("A.java:2 <init>", 0, "A.java:7 two", 3, "A.java:8 run", 0));
    }

    private static boolean isComment(String line) {
        String text = line.strip();
        return text.startsWith("/**") || text.startsWith("*") || text.startsWith("//");
    }

    private static List<Path> sources(String module, String kind) throws IOException {
        Path root = Path.of("..", module, "src", kind, "java");
        try (Stream<Path> files = Files.walk(root)) {
            List<Path> found =
                    files.filter(file -> file.toString().endsWith(".java")).collect(Collectors.toList());
            assertThat(found).as("%s", root).isNotEmpty();
            return found;
        }
    }
}
