package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.duskloom.engine.effect.EffectRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the guides say to those who change or build the program. */
class DeveloperGuideTest {
    /**
     * The phases of the default lifecycle and of clean that are meant for the command line (Maven, "Lifecycle
     * Reference").
     */
    private static final List<String> PHASES =
            List.of("clean", "validate", "compile", "test-compile", "test", "package", "verify", "install");

    private static final Pattern TYPE = Pattern.compile("`([A-Z][a-z]+[A-Za-z0-9]*)(?:\\.[A-Za-z]+)?(?:\\(\\))?`");
    private static final Pattern DECLARED = Pattern.compile("\\b(?:class|record|interface|enum) ([A-Z]\\w*)");

    /** Types of the JDK, a field of HTTP, and the effect that somebody may add. */
    private static final List<String> OF_OTHERS =
            List.of("BigInteger", "Host", "Math", "Ripple", "StrictMath", "WatchService");

    @TempDir
    private Path folder;

    /**
     * Every package of the engine has a line, in the order that the architecture test holds; and of the effects every
     * shared one.
     */
    @Test
    void everyPackageHasALineForDevelopers() throws IOException {
        String guide = Guide.of("DEVELOPERS.md").text();
        assertThat(firstCells(guide, "| engine package |"))
                .containsExactlyInAnyOrderElementsOf(packages("engine/src/main/java/org/duskloom/engine"));
        Set<String> shared = new TreeSet<>(packages("effects/src/main/java/org/duskloom/effects"));
        shared.removeAll(EffectRegistry.installed().names());
        assertThat(firstCells(guide, "| effects package |")).containsExactlyInAnyOrderElementsOf(shared);
    }

    /** A type that was renamed or taken out is named no more. */
    @Test
    void everyTypeThatIsNamedIsThere() throws IOException {
        Set<String> named = new TreeSet<>();
        TYPE.matcher(Guide.of("DEVELOPERS.md").text()).results().forEach(found -> named.add(found.group(1)));
        assertThat(named).hasSizeGreaterThan(100).contains("ShowReader", "PortEncoder");
        StringBuilder types = new StringBuilder();
        for (String module : List.of("engine", "effects", "cli")) {
            try (Stream<Path> files = Files.walk(Project.file(module + "/src"))) {
                for (Path file :
                        files.filter(file -> file.toString().endsWith(".java")).toList()) {
                    DECLARED.matcher(Files.readString(file))
                            .results()
                            .forEach(found ->
                                    types.append(' ').append(found.group(1)).append(' '));
                }
            }
        }
        named.removeIf(name -> types.indexOf(" " + name + " ") >= 0);
        assertThat(named).as("of others").containsExactlyInAnyOrderElementsOf(OF_OTHERS);
    }

    private static List<String> firstCells(String text, String header) {
        String table = text.substring(text.indexOf(header), text.indexOf("\n\n", text.indexOf(header)));
        return Pattern.compile("^\\| `([\\w.]+)` \\|", Pattern.MULTILINE)
                .matcher(table)
                .results()
                .map(row -> row.group(1))
                .toList();
    }

    private static Set<String> packages(String root) throws IOException {
        try (Stream<Path> files = Files.walk(Project.file(root))) {
            return files.filter(file -> file.endsWith("package-info.java"))
                    .map(file -> Project.file(root).relativize(file.getParent()).toString())
                    .map(name -> name.replace('\\', '.').replace('/', '.'))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @Test
    void everyCommandRuns() throws IOException {
        ReadersFolder reader = new ReadersFolder(folder);
        List<String> commands = Guide.of("DEVELOPERS.md").inLine("cli/duskloom");
        assertThat(commands).hasSizeGreaterThanOrEqualTo(2);
        commands.forEach(reader::type);
        assertThat(reader.commands()).isEqualTo(commands.size());
    }

    /** Every phase, plugin, profile, module and test that a guide names for Maven is known to the build. */
    @ParameterizedTest
    @ValueSource(strings = {"README.md", "DEVELOPERS.md"})
    void everyMavenCommandIsKnownToTheBuild(String name) throws IOException {
        Guide guide = Guide.of(name);
        assertThat(guide.mavenLines()).isNotEmpty();
        for (String line : guide.mavenLines()) {
            List<String> words = Arrays.asList(line.split(" +"));
            for (int i = 1; i < words.size(); i++) {
                assertThat(problemWith(words.get(i), words.get(i - 1))).as(line).isEmpty();
            }
        }
    }

    /** Continuous integration runs what the guides call the whole of the tests. */
    @Test
    void continuousIntegrationRunsTheSecondCommand() throws IOException {
        assertThat(Files.readAllLines(Project.file(".ci/run"))).contains("mvn -B --no-transfer-progress verify");
        assertThat(Guide.of("DEVELOPERS.md").mavenLines()).contains("mvn verify");
    }

    private static String problemWith(String word, String before) throws IOException {
        if (word.startsWith("-Dtest=")) {
            return isTest(word.substring(7)) ? "" : "no test " + word;
        }
        if (word.startsWith("-P")) {
            return poms().contains("<id>" + word.substring(2) + "</id>") ? "" : "no profile " + word;
        }
        if (word.startsWith("-")) {
            return "";
        }
        if (before.equals("-pl")) {
            return poms().contains("<module>" + word + "</module>") ? "" : "no module " + word;
        }
        if (word.contains(":")) {
            String plugin = word.substring(0, word.indexOf(':'));
            return poms().contains("<artifactId>" + plugin + "-maven") ? "" : "no plugin " + plugin;
        }
        return PHASES.contains(word) ? "" : "no phase " + word;
    }

    private static boolean isTest(String name) throws IOException {
        for (String module : List.of("engine", "effects", "cli")) {
            try (Stream<Path> files = Files.walk(Project.file(module + "/src/test"))) {
                if (files.anyMatch(file -> file.endsWith(name + ".java"))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String poms() throws IOException {
        StringBuilder poms = new StringBuilder();
        for (String pom : List.of("pom.xml", "engine/pom.xml", "effects/pom.xml", "cli/pom.xml")) {
            poms.append(Files.readString(Project.file(pom)));
        }
        return poms.toString();
    }
}
