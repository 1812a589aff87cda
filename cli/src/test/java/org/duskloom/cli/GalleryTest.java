package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The gallery in the documentation is the one that the program draws, and all of it. */
class GalleryTest {
    private static final String RENEWAL = "renew it with  cli/duskloom effects --gallery demos/gallery --force";
    private static final Path KEPT = Project.file("demos/gallery");

    @TempDir
    private static Path folder;

    private static Path drawn;

    @BeforeAll
    static void draw() {
        drawn = folder.resolve("effects/in order");
        int effects = EffectRegistry.installed().effects().size();
        assertThat(Ran.with("effects", "--gallery", drawn))
                .isEqualTo(new Ran(0, "", drawn + ": " + effects + " effects\n"));
    }

    @Test
    void hasThePageAndAStripOfEveryEffect() throws IOException {
        List<String> expected = Stream.concat(
                        Stream.of("README.md"),
                        EffectRegistry.installed().names().stream().map(name -> name + ".png"))
                .sorted()
                .toList();
        assertThat(namesIn(drawn)).isEqualTo(expected);
        assertThat(namesIn(KEPT)).as(RENEWAL).isEqualTo(expected);
    }

    @Test
    void thePageIsTheOneInTheDocumentation() throws IOException {
        assertThat(Files.readString(drawn.resolve("README.md")))
                .as(RENEWAL)
                .isEqualTo(Files.readString(KEPT.resolve("README.md")));
    }

    /** The decoded pixels, by the JDK's own reader: the compressed bytes are nobody's promise. */
    @Test
    void thePicturesAreThoseInTheDocumentation() throws IOException {
        for (String name : EffectRegistry.installed().names()) {
            BufferedImage made = ImageIO.read(drawn.resolve(name + ".png").toFile());
            BufferedImage kept = ImageIO.read(KEPT.resolve(name + ".png").toFile());
            assertThat(pixels(made)).as("%s.png: %s", name, RENEWAL).isEqualTo(pixels(kept));
        }
    }

    /** A show that repeats itself in the steps of the strip, or is dark, would show nothing of its effect. */
    @Test
    void everyMomentIsAnother() throws Exception {
        for (String name : EffectRegistry.installed().names()) {
            LoadedShow show = LoadedShow.load(Project.file("demos/firsts/" + name + ".json"), new Problems())
                    .orElseThrow();
            Set<String> seen = new HashSet<>();
            FrameSink sink = new SeenFrames(rgb -> seen.add(HexFormat.of().formatHex(rgb)));
            // The moments of the strip: 0.5, 1.8, 3.1 and 4.4 seconds, at 40 frames a second.
            new FrameRun(show.frames(), FrameList.of(20, 72, 124, 176), 1).into(sink, Progress.SILENT);
            assertThat(seen).as(name).hasSize(4).noneMatch(frame -> frame.matches("0*"));
        }
    }

    @Test
    void thePageTellsOfEverySetting() throws IOException {
        String page = Files.readString(drawn.resolve("README.md"));
        for (Effect effect : EffectRegistry.installed().effects()) {
            int start = page.indexOf("\n## " + effect.name() + "\n");
            int end = page.indexOf("\n## ", start + 1);
            assertThat(start).as(effect.name()).isPositive();
            String section = page.substring(start, end < 0 ? page.length() : end);
            assertThat(section).contains("](" + effect.name() + ".png)");
            assertThat(section).contains(Files.readString(Project.file("demos/firsts/" + effect.name() + ".json")));
            assertThat(section.lines().filter(line -> line.startsWith("| `")).map(line -> line.split("`")[1]))
                    .isEqualTo(effect.settings().stream().map(Setting::name).toList());
        }
    }

    @Test
    void aGalleryThatExistsIsNotTouched(@TempDir Path other) throws IOException {
        Path page = Files.writeString(other.resolve("README.md"), "old");
        Ran ran = Ran.with("effects", "--gallery", other).without(other);
        assertThat(ran).isEqualTo(new Ran(1, "", "duskloom: README.md exists already; use --force to replace it\n"));
        assertThat(page).hasContent("old");
        assertThat(namesIn(other)).containsExactly("README.md");
        assertThat(Ran.with("effects", "--gallery", other, "--force").code()).isZero();
        assertThat(page).hasSameTextualContentAs(drawn.resolve("README.md"));
    }

    @Test
    void isOfAllEffects(@TempDir Path other) throws IOException {
        for (String more : List.of("sweep", "--json")) {
            Ran ran = Ran.with("effects", "--gallery", other, more);
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err())
                    .startsWith("duskloom effects: --gallery is for all effects, without NAME and --json\n");
        }
        assertThat(namesIn(other)).isEmpty();
    }

    /** Who has written an effect and not its show is told what to write. */
    @Test
    void namesTheFirstShowsThatAreMissing(@TempDir Path other) throws Exception {
        Effect known = EffectRegistry.installed().find("wash").orElseThrow();
        EffectRegistry effects = EffectRegistry.of(List.of(known, Unseen.called("zither"), Unseen.called("yarrow")));
        Streams silent = new Streams(
                OutputStream.nullOutputStream(),
                StandardCharsets.UTF_8,
                new PrintStream(OutputStream.nullOutputStream()),
                TerminalTraits.PLAIN);
        try (Gallery gallery = new Gallery(IfExists.REFUSE)) {
            assertThatThrownBy(() -> gallery.draw(other, effects, silent))
                    .isInstanceOf(IOException.class)
                    .hasMessage("the gallery draws a first show of every effect; write demos/firsts/yarrow.json,"
                            + " demos/firsts/zither.json and build the program anew");
        }
        assertThat(namesIn(other)).isEmpty();
    }

    /** An effect that nobody has shown yet. */
    private record Unseen(String name) implements Effect {
        static Effect called(String name) {
            return new Unseen(name);
        }

        @Override
        public String summary() {
            return "nothing";
        }

        @Override
        public String formula() {
            return "0";
        }

        @Override
        public List<Setting<?>> settings() {
            return List.of();
        }

        @Override
        public Kernel prepare(Settings settings, Canvas canvas) {
            throw new UnsupportedOperationException();
        }
    }

    /** Width, height, and every pixel. */
    private static int[] pixels(BufferedImage image) {
        int width = image.getWidth();
        int[] pixels = new int[2 + width * image.getHeight()];
        pixels[0] = width;
        pixels[1] = image.getHeight();
        image.getRGB(0, 0, width, image.getHeight(), pixels, 2, width);
        return pixels;
    }

    private static List<String> namesIn(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        }
    }
}
