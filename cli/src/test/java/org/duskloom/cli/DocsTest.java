package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.duskloom.engine.effect.EffectRegistry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the guides say can be typed and copied, works as it stands there. */
class DocsTest {
    private static final List<String> GUIDES = List.of("README.md", "DEVELOPERS.md");
    private static final Pattern WHOLE_FILE = Pattern.compile("\"duskloom\": \"(timeline|display)/1\"");

    /**
     * The phases of the default lifecycle and of clean that are meant for the command line (Maven, "Lifecycle
     * Reference").
     */
    private static final List<String> PHASES =
            List.of("clean", "validate", "compile", "test-compile", "test", "package", "verify", "install");

    @TempDir
    private Path folder;

    static Stream<Guide> guides() throws IOException {
        List<Guide> guides = new ArrayList<>();
        for (String name : GUIDES) {
            guides.add(Guide.of(name));
        }
        return guides.stream();
    }

    @BeforeEach
    void copyDemos() throws IOException {
        Project.copy("demos", folder);
    }

    @Test
    void theFirstCommandsAreThoseToTryAndToTest() throws IOException {
        assertThat(Guide.of("README.md").blocks("sh").get(0).text()).isEqualTo("""
                cli/duskloom render demos/garden/show.json -o build/garden --strip
                mvn verify
                """);
    }

    @Test
    void everyCommandOfTheReadmeRuns() throws IOException {
        Guide readme = Guide.of("README.md");
        List<String> written = writeSnippets(readme);
        assertThat(written).contains("evening/map.csv", "evening/show.json", "evening/display.json");
        assertThat(runAll(readme)).isGreaterThanOrEqualTo(4);
        assertThat(readme.text())
                .contains("| `frames.rgb` |", "| `frames.json` |", "| `strip.png` |", "| `time.png` |");
        try (Stream<Path> made = Files.list(folder.resolve("build/garden"))) {
            assertThat(made.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("frames.rgb", "frames.json", "strip.png", "time.png");
        }
    }

    /**
     * The picture at the top is what the first command draws: decoded by the JDK, as compressed bytes are nobody's
     * promise.
     */
    @Test
    void theFirstPictureIsWhatTheFirstCommandDraws() throws IOException {
        Guide readme = Guide.of("README.md");
        Matcher picture = Pattern.compile("!\\[[^\\]]*]\\((.*?)\\)").matcher(readme.text());
        assertThat(picture.find()).isTrue();
        String command = readme.shellLines().get(0);
        assertThat(Ran.with(inFolder(command.split(" +"))).code()).isZero();
        BufferedImage shown = ImageIO.read(Project.file(picture.group(1)).toFile());
        BufferedImage drawn =
                ImageIO.read(folder.resolve("build/garden/strip.png").toFile());
        String renewal = "renew it: " + command + " --force && cp build/garden/strip.png " + picture.group(1);
        assertThat(List.of(drawn.getWidth(), drawn.getHeight()))
                .as(renewal)
                .isEqualTo(List.of(shown.getWidth(), shown.getHeight()));
        for (int y = 0; y < shown.getHeight(); y++) {
            for (int x = 0; x < shown.getWidth(); x++) {
                if (drawn.getRGB(x, y) != shown.getRGB(x, y)) {
                    throw new AssertionError("another dot at " + x + ", " + y + ": " + renewal);
                }
            }
        }
    }

    /** Five pixels in a row: those that are seen are always the first ones, until after four seconds all are. */
    @Test
    void theMaskOfTheReadmeUncoversFromTheLeft() throws IOException {
        String cue = Guide.of("README.md").blocks("json").stream()
                .map(Guide.Block::text)
                .filter(text -> text.contains("\"passes\": 0"))
                .findFirst()
                .orElseThrow();
        Files.writeString(folder.resolve("row.csv"), "prop,pixel,x,y\na,1,0,0\na,2,1,0\na,3,2,0\na,4,3,0\na,5,4,0\n");
        Path show = Files.writeString(folder.resolve("mask.json"), """
                {"duskloom": "timeline/1", "map": "row.csv", "groups": {"garden": ["a"]}, "rate": 10, "length": "5s",
                 "layers": [{"cues": [{"on": "garden", "effect": "wash"}]}, {"mask": true, "cues": [%s]}]}
                """.formatted(cue));
        assertThat(Ran.with("render", show, "-o", folder.resolve("mask")).code())
                .isZero();
        byte[] rgb = Files.readAllBytes(folder.resolve("mask/frames.rgb"));
        int before = 0;
        for (int frame = 0; frame < 50; frame++) {
            int seen = 0;
            while (seen < 5 && rgb[15 * frame + 3 * seen] != 0) {
                seen++;
            }
            for (int hidden = seen; hidden < 5; hidden++) {
                assertThat(rgb[15 * frame + 3 * hidden]).isZero();
            }
            assertThat(seen).isBetween(before, before + 1);
            before = seen;
        }
        assertThat(before).isEqualTo(5);
    }

    /** The music of the readme under its cue that follows it: at 128 beats a minute a beat lasts 15/32 s. */
    @Test
    void theMusicOfTheReadmeIsCounted() throws IOException {
        List<String> blocks = Guide.of("README.md").blocks("json").stream()
                .map(Guide.Block::text)
                .toList();
        String music = blocks.stream()
                .filter(text -> text.contains("\"tempo\": 128"))
                .findFirst()
                .orElseThrow()
                .strip();
        String cue = blocks.stream()
                .filter(text -> text.contains("\"follow\": \"low\""))
                .findFirst()
                .orElseThrow();
        Files.writeString(folder.resolve("row.csv"), "prop,pixel,x,y\ntrellis,1,0,0\ntrellis,2,1,0\n");
        Files.write(folder.resolve("evening.wav"), HexFormat.of().parseHex(SILENCE));
        Path show = Files.writeString(
                folder.resolve("music.json"), """
                {"duskloom": "timeline/1", "map": "row.csv", "length": "2:00", %s, "layers": [{"cues": [
                 %s, {"at": "@chorus+2b", "for": "2 bars", "on": "trellis", "effect": "wash"}]}]}
                """.formatted(music.substring(1, music.length() - 1), cue));
        Ran ran = Ran.with("check", show, "--times", "--fast");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("43.4375s  47.1875s");
    }

    /** A WAV file of four samples: IBM and Microsoft's RIFF WAVE of 1991. */
    private static final String SILENCE =
            "524946462c00000057415645666d7420100000000100010044ac0000885801000200100064617461080000000000000000000000";

    /** The ports of the guide in place of the garden's own. */
    @Test
    void thePortsOfTheReadmeFitTheGarden() throws IOException {
        String ports = Guide.of("README.md").blocks("json").stream()
                .map(Guide.Block::text)
                .filter(text -> text.startsWith("\"ports\":"))
                .findFirst()
                .orElseThrow();
        Path display = folder.resolve("demos/garden/display.json");
        String garden = Files.readString(display);
        Files.writeString(display, garden.substring(0, garden.indexOf("\"kinds\":")) + ports + "}");
        Ran ran = Ran.with("check", display);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("ports    2");
    }

    /** The kinds and supplies of the guide in place of the garden's own. */
    @Test
    void theSuppliesOfTheReadmeFitTheGarden() throws IOException {
        String wiring = Guide.of("README.md").blocks("json").stream()
                .map(Guide.Block::text)
                .filter(text -> text.startsWith("\"kinds\":"))
                .findFirst()
                .orElseThrow();
        Path display = folder.resolve("demos/garden/display.json");
        String garden = Files.readString(display);
        Files.writeString(display, garden.substring(0, garden.indexOf("\"kinds\":")) + wiring + "}");
        Ran ran = Ran.with("report", folder.resolve("demos/garden/show.json"));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("shed").contains("122");
    }

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
    void everyCommandForDevelopersRuns() throws IOException {
        Guide guide = Guide.of("DEVELOPERS.md");
        writeSnippets(guide);
        runAll(guide);
    }

    /** Warnings count too: who copies a snippet shall not be told that something is wrong with it. */
    @ParameterizedTest
    @MethodSource("guides")
    void everyWholeFileIsSound(Guide guide) throws IOException {
        for (String name : writeSnippets(guide)) {
            if (name.endsWith(".json")) {
                Ran ran = Ran.with("check", folder.resolve(name));
                assertThat(ran.err()).as("%s of %s", name, guide.name()).isEmpty();
                assertThat(ran.code()).isZero();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void everyFileThatALinkLeadsToIsThere(Guide guide) {
        Pattern link = Pattern.compile("]\\((?!https?:|#)([^)#]+)(?:#[^)]*)?\\)");
        List<String> targets = link.matcher(guide.text())
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(targets)
                .isNotEmpty()
                .allSatisfy(target -> assertThat(Project.file(target)).exists());
    }

    /** Every phase, plugin, profile, module and test that a guide names for Maven is known to the build. */
    @ParameterizedTest
    @MethodSource("guides")
    void everyMavenCommandIsKnownToTheBuild(Guide guide) throws IOException {
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

    /** Writes all snippets that are whole files into the folder; gives their names. */
    private List<String> writeSnippets(Guide guide) throws IOException {
        List<String> names = new ArrayList<>();
        for (Guide.Block block : guide.blocks("csv")) {
            names.add(write(block.fileName("map.csv"), block));
        }
        for (Guide.Block block : guide.blocks("json")) {
            if (WHOLE_FILE.matcher(block.text()).find()) {
                names.add(write(block.fileName("display.json"), block));
            }
        }
        assertThat(names).doesNotHaveDuplicates();
        return names;
    }

    private String write(String name, Guide.Block block) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), block.text());
        return name;
    }

    /** Runs all lines that call the program alone; gives how many there were. Pipes are those of PlayItTest. */
    private int runAll(Guide guide) {
        List<String> lines = guide.shellLines().stream()
                .filter(line -> line.startsWith("cli/duskloom ") && !line.contains(" | "))
                .toList();
        for (String line : lines) {
            Object[] words = inFolder(line.split(" +"));
            Ran ran = words[0].equals("watch") ? Ran.into(endOfThis(), TerminalTraits.PLAIN, words) : Ran.with(words);
            assertThat(ran.code()).as("%s%n%s", line, ran.err()).isZero();
            assertThat(ran.err()).as(line).doesNotContain("warning");
        }
        return lines.size();
    }

    /** What watches goes on until it is ended: as soon as it says where. */
    private static OutputStream endOfThis() {
        Thread thread = Thread.currentThread();
        return new OutputStream() {
            @Override
            public void write(int value) {
                thread.interrupt();
            }
        };
    }

    /** The arguments after the program's name; those that name outputs or files that exist, as seen from the folder. */
    private Object[] inFolder(String... words) {
        Object[] arguments = new Object[words.length - 1];
        for (int i = 1; i < words.length; i++) {
            boolean isOutput =
                    List.of("-o", "--output", "--gallery", "--json", "--csv").contains(words[i - 1])
                            && !words[i].equals("-");
            boolean isNew = i == 2 && words[1].equals("new");
            boolean isPath = isOutput || isNew || i > 1 && Files.exists(folder.resolve(words[i]));
            arguments[i - 1] = isPath ? folder.resolve(words[i]) : words[i];
        }
        return arguments;
    }
}
