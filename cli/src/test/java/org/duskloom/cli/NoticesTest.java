package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/**
 * Licences and notices of all libraries that the runnable jar carries. Which these are is taken from the poms of the
 * modules, and from those that the libraries bring along themselves.
 */
class NoticesTest {
    private static final Pattern DEPENDENCY = Pattern.compile("<dependency>(.*?)</dependency>", Pattern.DOTALL);
    private static final Pattern MANAGED =
            Pattern.compile("<(dependencyManagement|build|profiles)>.*?</\\1>", Pattern.DOTALL);
    private static final Pattern JAR = Pattern.compile("(.+?)-\\d[^/]*\\.jar");

    private final Map<String, Path> jars = jarsOfThisProcess();

    @Test
    void everyLibraryHasANotice() throws IOException {
        Set<String> named = new TreeSet<>();
        for (MatchResult line : Pattern.compile("^Library: (\\S+)$", Pattern.MULTILINE)
                .matcher(notice())
                .results()
                .toList()) {
            named.add(line.group(1));
        }
        assertThat(carried())
                .contains("commons-csv", "commons-io", "hipparchus-core", "jackson-core", "joml", "picocli")
                .isEqualTo(named);
    }

    /** Apache License 2.0, 4 (d): what the notices of others say is said again; and so is every licence. */
    @Test
    void whatLibrariesSayIsRepeated() throws IOException {
        int notices = 0;
        int licences = 0;
        for (String library : carried()) {
            Optional<String> said = textIn(library, "META-INF/NOTICE");
            if (said.isPresent()) {
                assertThat(notice()).as("what the notice of %s says", library).contains(said.get());
                notices++;
            }
            Optional<String> licence = textIn(library, "META-INF/LICENSE");
            if (licence.isPresent()) {
                assertThat(List.of(asApache(licence.get()), licence.get()))
                        .as("licence of %s", library)
                        .containsAnyOf(asApache(Files.readString(Project.file("LICENSE"))), kept("hipparchus"));
                licences++;
            }
        }
        assertThat(List.of(notices, licences)).isEqualTo(List.of(6, 6));
        assertThat(kept("joml")).startsWith("The MIT License\n\nCopyright (c) 2015-");
    }

    /** Apache License 2.0, 4 (b): of files that were changed it is said that they were, and of no others. */
    @Test
    void whatIsChangedIsSaid() throws IOException {
        Set<String> changed = new TreeSet<>();
        for (String library : carried()) {
            if (hasOldClasses(library)) {
                changed.add(library);
            }
        }
        Set<String> named = new TreeSet<>();
        Pattern.compile("^Library: (\\S+)\nLicence: .*\nChanged: class files older than Java 6", Pattern.MULTILINE)
                .matcher(notice())
                .results()
                .forEach(line -> named.add(line.group(1)));
        assertThat(named).isEqualTo(changed).isNotEmpty();
    }

    private boolean hasOldClasses(String library) throws IOException {
        try (ZipFile jar = new ZipFile(jars.get(library).toFile())) {
            return jar.stream()
                    .filter(entry -> entry.getName().endsWith(".class"))
                    .anyMatch(entry -> OldClassFiles.isOld(bytes(jar, entry.getName())));
        }
    }

    /** Every licence that the notices name is in the jar: ours, those kept here, or those that a library has. */
    @Test
    void everyLicenceThatIsNamedIsThere() throws IOException {
        for (MatchResult found : Pattern.compile("(?:[\\w-]+-LICENSE|licences/\\w+\\.txt)")
                .matcher(notice())
                .results()
                .toList()) {
            boolean kept = Files.exists(Path.of("src/main/resources/META-INF", found.group()));
            assertThat(kept
                            || textIn("jackson-core", "META-INF/" + found.group())
                                    .isPresent())
                    .as(found.group())
                    .isTrue();
        }
        assertThat(Files.readString(Path.of("pom.xml")).replaceAll("\\s+", ""))
                .as("the jar has our own licence")
                .contains("<include>LICENSE</include></includes><targetPath>META-INF</targetPath>");
    }

    /** The same text stands there with http and with https. */
    private static String asApache(String licence) {
        return licence.replace("http://", "https://").strip();
    }

    private static String notice() throws IOException {
        return Files.readString(Path.of("src/main/resources/META-INF/NOTICE"));
    }

    private static String kept(String name) throws IOException {
        return Files.readString(Path.of("src/main/resources/META-INF/licences", name + ".txt"))
                .strip();
    }

    /**
     * The names of all libraries that the modules need at run time, and that those need. One that this process has not
     * is inside of the library that needs it, whose own notice speaks of it.
     */
    private Set<String> carried() throws IOException {
        Deque<String> open = new ArrayDeque<>();
        for (String module : List.of("engine", "effects", "cli")) {
            open.addAll(needed(Files.readString(Project.file(module + "/pom.xml"))));
        }
        Set<String> found = new TreeSet<>();
        while (!open.isEmpty()) {
            String library = open.pop();
            if (!library.startsWith("duskloom-") && jars.containsKey(library) && found.add(library)) {
                open.addAll(needed(pomOf(library).orElse("")));
            }
        }
        return found;
    }

    private static List<String> needed(String pom) {
        return DEPENDENCY
                .matcher(MANAGED.matcher(pom).replaceAll(""))
                .results()
                .map(found -> found.group(1))
                .filter(text -> !text.matches("(?s).*<scope>(test|provided)</scope>.*"))
                .filter(text -> !text.contains("<optional>true</optional>"))
                .map(text -> text.replaceAll("(?s).*<artifactId>(.*?)</artifactId>.*", "$1"))
                .toList();
    }

    private Optional<String> pomOf(String library) throws IOException {
        try (ZipFile jar = new ZipFile(jars.get(library).toFile())) {
            return jar.stream()
                    .filter(entry -> entry.getName().matches("META-INF/maven/[^/]+/" + library + "/pom\\.xml"))
                    .findFirst()
                    .map(entry -> read(jar, entry.getName()));
        }
    }

    private Optional<String> textIn(String library, String name) throws IOException {
        try (ZipFile jar = new ZipFile(jars.get(library).toFile())) {
            return Stream.of(name, name + ".txt")
                    .filter(each -> jar.getEntry(each) != null)
                    .findFirst()
                    .map(each -> read(jar, each).strip());
        }
    }

    private static String read(ZipFile jar, String name) {
        return new String(bytes(jar, name), StandardCharsets.UTF_8).replace("\r", "");
    }

    private static byte[] bytes(ZipFile jar, String name) {
        try (InputStream entry = jar.getInputStream(jar.getEntry(name))) {
            return entry.readAllBytes();
        } catch (IOException fault) {
            throw new AssertionError(fault);
        }
    }

    private static Map<String, Path> jarsOfThisProcess() {
        Map<String, Path> jars = new TreeMap<>();
        Stream.of("jdk.module.path", "java.class.path")
                .map(System::getProperty)
                .filter(Objects::nonNull)
                .flatMap(path -> Stream.of(path.split(File.pathSeparator)))
                .map(Path::of)
                .forEach(file -> {
                    var named = JAR.matcher(file.getFileName().toString());
                    if (named.matches()) {
                        jars.put(named.group(1), file);
                    }
                });
        return jars;
    }
}
