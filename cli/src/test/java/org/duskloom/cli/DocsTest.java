package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the tour of the README says can be typed and copied, works as it stands there; and no page escapes. */
class DocsTest {
    private static final Pattern LINK = Pattern.compile("]\\((?!https?:|#)([^)#]+)(?:#[^)]*)?\\)");

    @TempDir
    private Path folder;

    private ReadersFolder reader;

    @BeforeEach
    void copyDemos() throws IOException {
        reader = new ReadersFolder(folder);
    }

    @Test
    void theFirstCommandsAreThoseToTryAndToTest() throws IOException {
        assertThat(Guide.of("README.md").shellLines())
                .startsWith("cli/duskloom render demos/garden/show.json -o build/garden --strip", "mvn verify");
    }

    /** From nothing to the byte in the file of a port: with what the reader has made on the way. */
    @Test
    void theTourLeadsToTheByte() throws IOException {
        Guide readme = Guide.of("README.md");
        List<String> shown = reader.follow(readme);
        assertThat(reader.written()).containsExactly("first/song.json", "garden.csv");
        assertThat(reader.commands()).isGreaterThanOrEqualTo(19);
        assertThat(shown).hasSize(2);
        String display = Files.readString(reader.resolve("first/display.json"));
        String show = Files.readString(reader.resolve("first/show.json"));
        assertThat(inOneLine(display)).contains(inOneLine(shown.get(0)));
        assertThat(inOneLine(show)).contains(inOneLine(shown.get(1)));

        assertThat(namesIn("build/garden"))
                .containsExactlyInAnyOrder("frames.rgb", "frames.json", "strip.png", "time.png");
        assertThat(firstCells(readme.text(), "| in `build/lights` |"))
                .containsExactlyInAnyOrderElementsOf(namesIn("build/lights"));
        assertThat(readme.text()).contains("in frame 600,", "172944", "It is 121:", "the 183 that");
        byte[] line = Files.readAllBytes(reader.resolve("build/lights/ports/high.bin"));
        byte[] frames = Files.readAllBytes(reader.resolve("build/lights/frames.rgb"));
        int before = 30 + 24 + 24;
        assertThat(line[600 * 288 + 48 * 3]).isEqualTo((byte) 121);
        assertThat(frames[3 * (600 * (before + 48) + before) + 1]).isEqualTo((byte) 183);
        assertThat(Files.readAllLines(reader.resolve("build/lights/patch.csv"))).contains("high,trellis,1,2,145,GRB");
    }

    private static String inOneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private List<String> namesIn(String name) throws IOException {
        Path root = reader.resolve(name);
        try (Stream<Path> made = Files.walk(root)) {
            return made.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .toList();
        }
    }

    private static List<String> firstCells(String text, String header) {
        String table = text.substring(text.indexOf(header), text.indexOf("\n\n", text.indexOf(header)));
        return Pattern.compile("^\\| (`.+?`) \\|", Pattern.MULTILINE)
                .matcher(table.substring(header.length()))
                .results()
                .flatMap(row -> Stream.of(row.group(1).replace("`", "").split(", ")))
                .toList();
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
        assertThat(Ran.with(reader.arguments(command)).code()).isZero();
        BufferedImage shown = ImageIO.read(Project.file(picture.group(1)).toFile());
        BufferedImage drawn =
                ImageIO.read(reader.resolve("build/garden/strip.png").toFile());
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

    /** Blocks of the gallery are drawn by GalleryTest, commands of the farm run by FarmTest. */
    @Test
    void noPageEscapes() throws IOException {
        List<String> withBlocks = new ArrayList<>();
        for (String page : pages()) {
            List<Guide.Block> blocks = Guide.of(page).blocks();
            if (!blocks.isEmpty()) {
                withBlocks.add(page);
            }
            assertThat(blocks)
                    .extracting(Guide.Block::language)
                    .as(page)
                    .allMatch(Set.of("sh", "json", "csv")::contains);
        }
        assertThat(withBlocks)
                .containsExactlyInAnyOrder(
                        "README.md", "demos/reference/handbook.md", "demos/gallery/README.md", "demos/farm/README.md");
    }

    @Test
    void everyFileThatALinkLeadsToIsThere() throws IOException {
        List<String> lost = new ArrayList<>();
        int seen = 0;
        for (String page : pages()) {
            for (String target : LINK.matcher(Guide.of(page).text())
                    .results()
                    .map(found -> found.group(1))
                    .toList()) {
                if (!Files.exists(Project.file(page).resolveSibling(target))) {
                    lost.add(page + ": " + target);
                }
                seen++;
            }
        }
        assertThat(lost).isEmpty();
        assertThat(seen).isGreaterThan(50);
    }

    private static List<String> pages() throws IOException {
        try (Stream<Path> demos = Files.walk(Project.file("demos"))) {
            Stream<String> below = demos.map(
                            file -> Project.ROOT.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> name.endsWith(".md"));
            return Stream.concat(Stream.of("README.md", "DEVELOPERS.md"), below).toList();
        }
    }
}
