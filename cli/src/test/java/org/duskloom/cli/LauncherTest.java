package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The launcher with a Java and a Maven that only say how they were called. All folders have a blank in their names. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    private static final String PAINTING = "-XX:+UseSerialGC|-Xms64m|-XX:+IgnoreUnrecognizedVMOptions"
            + "|-XX:InlineSmallCode=1000|-XX:Tier3BackEdgeThreshold=6000"
            + "|-XX:Tier4InvocationThreshold=60000|-XX:Tier4MinInvocationThreshold=100"
            + "|-XX:Tier4CompileThreshold=200000|-XX:Tier4BackEdgeThreshold=1000000"
            + "|-XX:CompileCommand=quiet"
            + "|-XX:CompileCommand=CompileThresholdScaling,sun.security.provider.SHA2::implCompress,0.001"
            + "|-XX:-UsePerfData|-Dduskloom.terminals=|"
            + "-Xlog:disable|-Xlog:all=error:stderr|-Xlog:cds=off:stderr|-jar|";

    private static final String OPTIONS = PAINTING.replace("terminals=|", "terminals=|-XX:TieredStopAtLevel=1|");

    private static final String LARGE_PAGES = "-XX:+UseTransparentHugePages";

    @TempDir
    private Path temp;

    private Path project;
    private Path launcher;
    private Path jar;
    private Path javaHome;

    @BeforeEach
    void install() throws IOException {
        project = temp.toRealPath().resolve("our garden");
        launcher = project.resolve("cli/duskloom");
        Files.createDirectories(launcher.getParent());
        Files.copy(Path.of("duskloom"), launcher);
        makeRunnable(launcher);
        Files.writeString(launcher.resolveSibling("pom.xml"), "");
        jar = project.resolve("cli/target/duskloom.jar");
        javaHome = java("17.0.15");
        Files.createDirectories(jar.getParent());
        Files.writeString(jar, "jar");
    }

    @Test
    void passesArgumentsOn() throws Exception {
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString()), "render", "two words", "", "$x*"))
                .isEqualTo("0: " + PAINTING + jar + "|render|two words||$x*|");
    }

    /** The second compiler pays for itself where whole shows are painted. Whoever chooses another way is left alone. */
    @Test
    void leavesTheSecondCompilerOutForShortJobs() throws Exception {
        Map<String, String> environment = Map.of("JAVA_HOME", javaHome.toString());
        for (String painting : List.of("render", "film", "watch", "report", "send")) {
            assertThat(run(launcher, environment, painting)).isEqualTo("0: " + PAINTING + jar + "|" + painting + "|");
        }
        for (String brief : List.of("check", "strip", "effects", "--version")) {
            assertThat(run(launcher, environment, brief)).isEqualTo("0: " + OPTIONS + jar + "|" + brief + "|");
        }
        Map<String, String> chosen =
                Map.of("JAVA_HOME", javaHome.toString(), "JAVA_TOOL_OPTIONS", "-XX:-TieredCompilation");
        assertThat(run(launcher, chosen, "check")).isEqualTo("0: " + PAINTING + jar + "|check|");
    }

    /** Where the system gives them only to who asks: elsewhere the JVM would have them anyway, or complain. */
    @Test
    void asksForLargePagesWhereThatHelps() throws Exception {
        Path ways = Path.of("/sys/kernel/mm/transparent_hugepage/enabled");
        boolean areForWhoAsks =
                Files.isReadable(ways) && Files.readString(ways).strip().equals("always [madvise] never");
        Map<String, String> environment = Map.of("JAVA_HOME", javaHome.toString());
        for (String command : List.of("render", "check")) {
            assertThat(said(launcher, environment, command).contains("|" + LARGE_PAGES + "|"))
                    .isEqualTo(areForWhoAsks);
        }
    }

    /** What is to be typed next is what was typed: the path to the launcher, or its name where the shell found it. */
    @Test
    void tellsHowItWasCalled() throws Exception {
        assertThat(said(launcher, Map.of("JAVA_HOME", javaHome.toString())))
                .contains("|-Dduskloom.command=" + launcher + "|");
        Map<String, String> onPath =
                Map.of("JAVA_HOME", javaHome.toString(), "PATH", launcher.getParent() + ":/usr/bin:/bin");
        assertThat(said(Path.of("duskloom"), onPath)).contains("|-Dduskloom.command=duskloom|");
    }

    @Test
    void takesJavaFromThePath() throws Exception {
        String path = javaHome.resolve("bin") + ":/usr/bin:/bin";
        assertThat(run(launcher, Map.of("PATH", path))).isEqualTo("0: " + OPTIONS + jar + "|");
    }

    @Test
    void findsItselfThroughLinks() throws Exception {
        Path first = Links.symbolic(project.resolve("a link"), Path.of("cli/duskloom"));
        Path bin = Files.createDirectories(temp.toRealPath().resolve("my bin"));
        Path second = Links.symbolic(bin.resolve("duskloom"), first);
        assertThat(run(second, Map.of("JAVA_HOME", javaHome.toString()))).isEqualTo("0: " + OPTIONS + jar + "|");
        String path = bin + ":/usr/bin:/bin";
        assertThat(run(Path.of("duskloom"), Map.of("JAVA_HOME", javaHome.toString(), "PATH", path)))
                .isEqualTo("0: " + OPTIONS + jar + "|");
    }

    @Test
    void hasTheExitCodeOfTheProgram() throws Exception {
        script(javaHome.resolve("bin/java"), "exit 3");
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString()))).isEqualTo("3: ");
    }

    @Test
    void saysThatJavaIsMissing() throws Exception {
        Path empty = Files.createDirectory(temp.resolve("empty"));
        assertThat(run(launcher, Map.of("PATH", empty.toString())))
                .isEqualTo("1: duskloom: needs Java 17 or newer: install it, or set JAVA_HOME to where it is|");
        assertThat(run(launcher, Map.of("JAVA_HOME", empty.toString())))
                .isEqualTo("1: duskloom: JAVA_HOME is " + empty
                        + ", but there is no bin/java; it needs Java 17 or newer there|");
    }

    @ParameterizedTest
    @CsvSource({"11.0.2, 11", "1.8.0_392, 8", "9, 9", "16-ea, 16"})
    void saysThatJavaIsTooOld(String release, String shown) throws Exception {
        Path home = java(release);
        assertThat(run(launcher, Map.of("JAVA_HOME", home.toString())))
                .isEqualTo("1: duskloom: needs Java 17 or newer, and " + home + "/bin/java is Java " + shown
                        + "; set JAVA_HOME|");
    }

    @ParameterizedTest
    @CsvSource({"17", "17.0.15", "21.0.1", "25-ea", "100"})
    void takesNewerJava(String release) throws Exception {
        assertThat(run(launcher, Map.of("JAVA_HOME", java(release).toString()))).startsWith("0: ");
    }

    /** Some have no file that tells their release: they are asked. */
    @Test
    void asksAJavaThatDoesNotTell() throws Exception {
        Files.delete(javaHome.resolve("release"));
        script(javaHome.resolve("bin/java"), "echo 'openjdk version \"1.8.0_392\"' >&2; echo 'more \"20\"' >&2");
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString()))).contains("is Java 8;");
        script(javaHome.resolve("bin/java"), "echo 'openjdk version \"21.0.1\" 2023-10-17' >&2; exit 0");
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString()))).startsWith("0: ");
    }

    /**
     * For each build and each Java one archive of classes: its maker gets the file's name, and those after it use it.
     */
    @Test
    void makesAnArchiveOfClassesOnce() throws Exception {
        addSample();
        Path made = temp.resolve("made");
        script(
                javaHome.resolve("bin/java"),
                "for a; do case $a in -XX:ArchiveClassesAtExit=*) echo archive >\"${a#*=}\"; echo x >>'" + made
                        + "'; echo noise; exit;; esac; done; printf '%s\\n' \"$@\"");
        Path archive = project.resolve("cli/target/duskloom-java17.jsa");
        String options = OPTIONS.replace("|-Xlog:disable", "|-XX:SharedArchiveFile=" + archive + "|-Xlog:disable");
        for (int i = 0; i < 2; i++) {
            assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString(), "PATH", "/usr/bin:/bin"), "check"))
                    .isEqualTo("0: " + options + jar + "|check|");
            assertThat(made).hasContent("x");
        }
        Files.setLastModifiedTime(archive, FileTime.fromMillis(0));
        run(launcher, Map.of("JAVA_HOME", javaHome.toString(), "PATH", "/usr/bin:/bin"));
        assertThat(made).hasContent("x\nx");
        try (Stream<Path> entries = Files.list(archive.getParent())) {
            assertThat(entries).containsExactlyInAnyOrder(archive, jar);
        }
    }

    /** Whoever stops the first call finds nothing left that the next would not take away. */
    @Test
    void leavesNoHalfAnArchiveWhereItIsStopped() throws Exception {
        addSample();
        script(
                javaHome.resolve("bin/java"),
                "for a; do case $a in -XX:ArchiveClassesAtExit=*) echo half >\"${a#*=}\"; kill -INT $PPID;"
                        + " exit 130;; esac; done; echo ran");
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString(), "PATH", "/usr/bin:/bin"), "check"))
                .isEqualTo("130: ");
        try (Stream<Path> entries = Files.list(jar.getParent())) {
            assertThat(entries).containsExactly(jar);
        }
    }

    /** Java without an archive of its own has nothing to add to; so it is with a runtime that jlink made. */
    @Test
    void asksOnlyOnceForAnArchiveThatCannotBeMade() throws Exception {
        addSample();
        Path asked = temp.resolve("asked");
        script(
                javaHome.resolve("bin/java"),
                "case $* in *ArchiveClassesAtExit*) echo x >>'" + asked + "'; exit 0;; esac; printf '%s\\n' \"$@\"");
        for (int i = 0; i < 2; i++) {
            assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString(), "PATH", "/usr/bin:/bin"), "check"))
                    .isEqualTo("0: " + OPTIONS + jar + "|check|");
            assertThat(asked).hasContent("x");
        }
    }

    /** In the download the jar is beside the launcher. Nothing is built there, and sources are no concern of it. */
    @Test
    void runsTheJarOfADownload() throws Exception {
        Path download = unpack();
        Path maven = maven("echo called; exit 1");
        Map<String, String> environment = Map.of("JAVA_HOME", javaHome.toString(), "PATH", maven + ":/usr/bin:/bin");
        assertThat(run(launcher, environment, "check")).isEqualTo("0: " + OPTIONS + download + "|check|");
        Files.delete(download);
        assertThat(run(launcher, environment, "check"))
                .isEqualTo("1: duskloom: " + download + " is missing; unpack the download anew|");
    }

    /** Then no other Java is looked for, and none that is set in its place counts. */
    @Test
    void takesTheJavaThatItCameWith() throws Exception {
        Path download = unpack();
        Files.move(java("21.0.1"), project.resolve("runtime"));
        Map<String, String> environment = Map.of("JAVA_HOME", temp.toString(), "PATH", "/usr/bin:/bin");
        assertThat(run(launcher, environment, "check")).isEqualTo("0: " + OPTIONS + download + "|check|");
        script(project.resolve("runtime/bin/java"), "exit 3");
        assertThat(run(launcher, environment)).isEqualTo("3: ");
    }

    /** What is installed for all is nobody's to write to; its archive would be left behind when it is removed. */
    @Test
    void makesNoArchiveWhereTheDemosAreElsewhere() throws Exception {
        Path download = unpack();
        run(launcher, Map.of("JAVA_HOME", javaHome.toString(), "PATH", "/usr/bin:/bin"));
        try (Stream<Path> entries = Files.list(download.getParent())) {
            assertThat(entries).containsExactlyInAnyOrder(download, launcher);
        }
    }

    @Test
    void buildsQuietlyWhereTheJarIsMissing() throws Exception {
        Files.delete(jar);
        Path bin = maven("pwd >called; printf '%s|' \"$@\" >>called; echo noise; : >cli/target/duskloom.jar");
        String path = bin + ":/usr/bin:/bin";
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString(), "PATH", path)))
                .isEqualTo("0: " + OPTIONS + jar + "|");
        assertThat(project.resolve("called")).hasContent(project + "\n-q|-B|-DskipTests|-pl|cli|-am|package|");
    }

    /** Tests and guides are no part of the program: who edits them need not build it anew. */
    @Test
    void saysThatTheSourcesAreNewer() throws Exception {
        Map<String, String> environment = Map.of("JAVA_HOME", javaHome.toString(), "PATH", "/usr/bin:/bin");
        FileTime built = FileTime.fromMillis(1_000_000_000);
        FileTime later = FileTime.fromMillis(1_000_002_000);
        Files.setLastModifiedTime(jar, built);
        Files.setLastModifiedTime(launcher.resolveSibling("pom.xml"), built);
        for (String part :
                List.of("engine/src/main/java/A.java", "effects/src/main/B", "demos/firsts/wash.json", "pom.xml")) {
            Path source = project.resolve(part);
            Files.createDirectories(source.getParent());
            Files.writeString(source, "");
            Files.setLastModifiedTime(source, later);
            assertThat(run(launcher, environment, "check"))
                    .isEqualTo("0: duskloom: " + part + " is newer than the program; build it anew with"
                            + "  mvn -q -DskipTests package|" + OPTIONS + jar + "|check|");
            Files.setLastModifiedTime(source, built);
            assertThat(run(launcher, environment, "check")).isEqualTo("0: " + OPTIONS + jar + "|check|");
        }
        for (String part : List.of("engine/src/test/java/A.java", "README.md", "demos/garden/show.json")) {
            Path other = project.resolve(part);
            Files.createDirectories(other.getParent());
            Files.writeString(other, "");
            assertThat(run(launcher, environment, "check")).isEqualTo("0: " + OPTIONS + jar + "|check|");
        }
    }

    @Test
    void showsWhyTheBuildFailed() throws Exception {
        Files.delete(jar);
        String path = maven("echo 'no network'; exit 1") + ":/usr/bin:/bin";
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString(), "PATH", path)))
                .isEqualTo("1: no network|duskloom: could not be built; what Maven says is above|");
    }

    @Test
    void saysThatMavenIsMissing() throws Exception {
        Files.delete(jar);
        Path empty = Files.createDirectory(temp.resolve("empty"));
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString(), "PATH", empty.toString())))
                .isEqualTo("1: duskloom: is not built yet, and there is no mvn (Maven 3.8 or newer) to build it with|");
    }

    /** Java must not take the names of files for ASCII; a locale that somebody chose is left alone. */
    @ParameterizedTest
    @CsvSource({
        "LANG=C,                    ,        C.UTF-8",
        "LC_ALL=C,           C.UTF-8,        C.UTF-8",
        "LC_ALL=POSIX,       C.UTF-8,        C.UTF-8",
        "LC_CTYPE=C,                ,        C.UTF-8",
        "LANG=de_AT.UTF-8,          ,               ",
        "LC_ALL=de_AT.UTF-8, de_AT.UTF-8,           "
    })
    void givesJavaALocaleThatKnowsAllLetters(String set, String all, String letters) throws Exception {
        script(javaHome.resolve("bin/java"), "echo \"${LC_ALL:-} ${LC_CTYPE:-}\"");
        String[] variable = set.split("=");
        assertThat(run(launcher, Map.of("JAVA_HOME", javaHome.toString(), variable[0], variable[1])))
                .isEqualTo("0: " + (all == null ? "" : all) + " " + (letters == null ? "" : letters) + "|");
    }

    /** The same without the options that are others each time, or on another machine. */
    private String run(Path command, Map<String, String> environment, String... arguments) throws Exception {
        return said(command, environment, arguments)
                .replaceFirst("-Dduskloom\\.command=[^|]*\\|", "")
                .replace(LARGE_PAGES + "|", "");
    }

    /** Exit code and everything said, lines ended by a bar. */
    private String said(Path command, Map<String, String> environment, String... arguments) throws Exception {
        // A shell finds its way: ProcessBuilder would look in the path of this JVM.
        List<String> line = new ArrayList<>(List.of("/bin/sh", "-c", "\"$0\" \"$@\"", command.toString()));
        line.addAll(List.of(arguments));
        ProcessBuilder builder =
                new ProcessBuilder(line).redirectErrorStream(true).directory(temp.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process run = builder.start();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return run.waitFor() + ": " + said.replace('\n', '|');
    }

    /** Makes of the project what comes out of a download; gives the jar of that. */
    private Path unpack() throws IOException {
        Files.delete(launcher.resolveSibling("pom.xml"));
        Path beside = Files.move(jar, launcher.resolveSibling("duskloom.jar"));
        Files.delete(jar.getParent());
        return beside;
    }

    private void addSample() throws IOException {
        Path sample = project.resolve("demos/garden/show.json");
        Files.createDirectories(sample.getParent());
        Files.writeString(sample, "{}");
        Files.setLastModifiedTime(sample, FileTime.fromMillis(0));
    }

    private Path java(String release) throws IOException {
        Path home = temp.toRealPath().resolve("java " + release);
        Files.createDirectories(home.resolve("bin"));
        Files.writeString(
                home.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"" + release + "\"\nOS_ARCH=\"y\"\n");
        script(home.resolve("bin/java"), "printf '%s\\n' \"$@\"");
        return home;
    }

    private Path maven(String body) throws IOException {
        Path bin = Files.createDirectories(temp.toRealPath().resolve("maven bin"));
        script(bin.resolve("mvn"), body);
        return bin;
    }

    private static void script(Path file, String body) throws IOException {
        Files.writeString(file, "#!/bin/sh\n" + body + "\n");
        makeRunnable(file);
    }

    private static void makeRunnable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
}
