package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StripCommandTest {
    @TempDir
    private Path folder;

    private Path show;

    @BeforeEach
    void write() throws IOException {
        show = Garden.in(folder);
    }

    @Test
    void drawsMomentsOfTheWholeShow() {
        Ran ran = strip("strip.png").without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).matches("strip\\.png: 24 frames, 20 pixels, \\d+\\.\\d s\n");
    }

    /** The same two frames, however their times are written. */
    @Test
    void takesTimesAsATimelineHasThem() {
        strip("a.png", "--from", "500ms", "--to", "550ms");
        strip("b.png", "--from", "20f", "--to", "0:00.55", "--count", "2");
        assertThat(folder.resolve("a.png")).hasSameBinaryContentAs(folder.resolve("b.png"));
        strip("c.png", "--from", "21f", "--to", "23f");
        assertThat(Files.exists(folder.resolve("c.png"))).isTrue();
        assertThat(bytes("c.png")).isNotEqualTo(bytes("a.png"));
    }

    /** The garden has three cues without names. */
    @Test
    void showsAMomentInsideEachCue() {
        Ran ran = strip("cues.png", "--by", "cue").without(folder);
        assertThat(ran.err()).startsWith("cues.png: 3 frames, 20 pixels");
        assertThat(strip("one.png", "--by", "cue", "--count", "1")
                        .without(folder)
                        .err())
                .startsWith("one.png: 1 frame,");
        assertThat(strip("time.png", "--by", "cue", "--kind", "time").err()).contains("--by cue is for contact strips");
        assertThat(strip("x.png", "--by", "prop").err()).contains("'prop' is neither time nor cue");
    }

    /** The first cue is covered by the second from a half of its time on; its own moment comes before that. */
    @Test
    void aMomentOfACueIsOneInWhichItIsSeen() throws IOException {
        String wash = "\"on\": \"fence\", \"effect\": \"wash\", \"with\": {\"palette\": ";
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s", "layers": [
                 {"cues": [{%s "blue"}}]}, {"cues": [{"at": "1s", %s "red"}}]}]}
                """.formatted(wash, wash));
        strip("cues.png", "--by", "cue");
        BufferedImage picture = ImageIO.read(folder.resolve("cues.png").toFile());
        assertThat(dots(picture, 0x0000FF)).isPositive();
        assertThat(dots(picture, 0xFF0000)).isEqualTo(dots(picture, 0x0000FF));
    }

    /** What is seen of a cue elsewhere makes no moment of what is looked at, and what is played elsewhere has none. */
    @Test
    void aMomentOfACueIsOneInWhichItIsSeenThere() throws IOException {
        String wash = "\"effect\": \"wash\", \"with\": {\"palette\": ";
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s", "layers": [
                 {"cues": [{"on": "*", %1$s "blue"}}]}, {"cues": [{"at": "1s", "on": "fence", %1$s "red"}}]},
                 {"cues": [{"on": "daisy-1", "for": "900ms", %1$s "white"}}]}]}
                """.formatted(wash));
        assertThat(strip("cues.png", "--by", "cue", "--on", "fence")
                        .without(folder)
                        .err())
                .startsWith("cues.png: 2 frames, 8 pixels");
        BufferedImage picture = ImageIO.read(folder.resolve("cues.png").toFile());
        assertThat(dots(picture, 0x0000FF)).isPositive();
        assertThat(dots(picture, 0xFF0000)).isEqualTo(dots(picture, 0x0000FF));
    }

    /** A mask of what is dark anyway is not seen; without --on each cue has its moment. */
    @Test
    void aCueOfWhichNothingIsSeenThereHasNoMoment() throws IOException {
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s", "layers": [
                 {"cues": [{"on": "fence", "effect": "wash"}, {"on": "daisy-1", "for": "500ms", "effect": "wash"}]},
                 {"mask": true, "cues": [{"at": "1s", "on": "*", "effect": "wash", "with": {"palette": "grey"}}]}]}
                """);
        assertThat(strip("a.png", "--by", "cue", "--on", "daisy-1")
                        .without(folder)
                        .err())
                .startsWith("a.png: 1 frame,");
        assertThat(strip("b.png", "--by", "cue").without(folder).err()).startsWith("b.png: 3 frames,");
        assertThat(strip("c.png", "--by", "cue", "--on", "fence")
                        .without(folder)
                        .err())
                .startsWith("c.png: 2 frames,");
        assertThat(strip("d.png", "--by", "cue", "--on", "daisy-1", "--from", "1s")
                        .err())
                .contains("no cue is seen on what --on names in this time");
    }

    @Test
    void noCueMayBePlayedThere() throws IOException {
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s", "layers": [
                 {"cues": [{"on": "fence", "for": "1s", "effect": "wash"}]}]}
                """);
        assertThat(strip("cues.png", "--by", "cue", "--on", "daisy-1").err())
                .contains("--by cue: no cue is seen on what --on names in this time");
        assertThat(strip("cues.png", "--by", "cue", "--from", "1.5s").err())
                .contains("--by cue: no cue is played in this time");
    }

    private static long dots(BufferedImage picture, int colour) {
        return IntStream.range(0, picture.getWidth() * picture.getHeight())
                .filter(i -> (picture.getRGB(i % picture.getWidth(), i / picture.getWidth()) & 0xFFFFFF) == colour)
                .count();
    }

    /**
     * Three arms turn once in four seconds: a third of a turn, 53 1/3 frames, makes them look as before. Of the panels
     * that are drawn no two are nearer to that than an eighth of a turn of the arms.
     */
    @Test
    void momentsOfATurningWheelLookDifferent() throws IOException {
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "4s", "layers": [{"cues": [
                  {"on": "*", "effect": "spin", "with": {"palette": ["red", "lime", "blue"], "arms": 3, "every": "4s"}}]}]}
                """);
        Ran ran = strip("wheel.png", "--count", "3", "--columns", "3", "--pixel-size", "10");
        assertThat(ran.err()).contains("wheel.png: 3 frames");
        BufferedImage picture = ImageIO.read(folder.resolve("wheel.png").toFile());
        int panel = (picture.getWidth() - 2 * 24 + 16) / 3;
        for (int one = 0; one < 3; one++) {
            int left = 24 + one * panel;
            int right = 24 + (one + 1) % 3 * panel;
            long same = IntStream.range(0, (panel - 16) * 100)
                    .filter(i -> picture.getRGB(left + i / 100, 70 + i % 100)
                            != picture.getRGB(right + i / 100, 70 + i % 100))
                    .count();
            assertThat(same).isGreaterThan(1000);
        }
    }

    /**
     * A scene of two cues that two cues play, one of them twice: a moment of each in each, and the time of the play
     * that has a name, 40 to 80.
     */
    @Test
    void showsTheCuesOfScenes() throws IOException {
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s", "scenes": {
                  "s": {"length": "500ms", "layers": [{"cues": [
                    {"on": "lead", "effect": "wash"}, {"name": "run", "on": "lead", "effect": "chase"}]}]}},
                 "layers": [{"cues": [{"scene": "s", "on": {"lead": "fence"}},
                   {"at": "1s", "name": "late", "scene": "s", "repeat": 2, "on": {"lead": "daisy-1"}}]}]}
                """);
        assertThat(strip("cues.png", "--by", "cue").without(folder).err()).startsWith("cues.png: 4 frames, 20 pixels");
        strip("late.png", "--cue", "late", "--kind", "time");
        strip("times.png", "--from", "1s", "--to", "2s", "--kind", "time");
        assertThat(bytes("late.png")).isEqualTo(bytes("times.png"));
        assertThat(strip("x.png", "--cue", "lato").err()).contains("did you mean \"late\"?");
    }

    /** Names of cues are instants wherever a time is asked for. */
    @Test
    void takesTheTimesOfCues() throws IOException {
        Files.writeString(show, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "2s",
                 "layers": [{"cues": [{"name": "late", "at": "1s", "for": "500ms", "on": "fence", "effect": "chase"}]}]}
                """);
        strip("named.png", "--from", "@late", "--to", "@late.end-50ms", "--kind", "time");
        strip("times.png", "--from", "1s", "--to", "1450ms", "--kind", "time");
        assertThat(bytes("named.png")).isEqualTo(bytes("times.png"));
        assertThat(strip("x.png", "--from", "@lats").err()).contains("did you mean \"late\"?");
    }

    /** The chase has 40 frames, 20 to 60. */
    @Test
    void showsTheTimeOfACue() throws IOException {
        Files.writeString(
                show, Files.readString(show).replace("{\"at\": \"500ms\"", "{\"name\": \"rush\", \"at\": \"500ms\""));
        strip("cue.png", "--cue", "rush", "--kind", "time");
        strip("times.png", "--from", "20f", "--to", "60f", "--kind", "time");
        assertThat(bytes("cue.png")).isEqualTo(bytes("times.png"));
        Ran wrong = strip("x.png", "--cue", "rusj");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("--cue: no cue is called \"rusj\"; did you mean \"rush\"?");
        assertThat(strip("x.png", "--cue", "rush", "--from", "1s").err()).contains("leave out --from and --to");
    }

    @Test
    void namesAreNeededForACue() {
        assertThat(strip("x.png", "--cue", "rush").err()).contains("give the cue a \"name\"");
    }

    /** The daisies have 12 of the 20 pixels, and with fewer rows the time strip is lower. */
    @Test
    void showsOnlyWhatIsAskedFor() {
        Ran ran = strip("daisies.png", "--on", "daisies").without(folder);
        assertThat(ran.err()).contains(" 12 pixels,");
        assertThat(strip("both.png", "--on", "daisy-1", "--on", "fence").err()).contains(" 14 pixels,");
        strip("all.png", "--kind", "time", "--pixel-size", "10");
        strip("some.png", "--kind", "time", "--pixel-size", "10", "--on", "fence");
        assertThat(height("all.png") - height("some.png")).isGreaterThanOrEqualTo(120);
        assertThat(strip("list.png", "--on", "daisy-1;fence").err())
                .contains(
                        "--on: there is no prop and no group \"daisy-1;fence\"; type --on before each: --on daisy-1 --on"
                                + " fence\n");
        assertThat(strip("list.png", "--on", "fence", "--on", "daisy-*, fence").err())
                .contains("; type --on before each: --on \"daisy-*\" --on fence\n");
        assertThat(strip("list.png", "--on", "daisy-1;fense").err())
                .contains("; type --on before each: --on daisy-1 --on fence\n");
        assertThat(strip("list.png", "--on", "daisy-1;moonbeam").err()).doesNotContain("before each");
        assertThat(strip("x.png", "--on", "daisy-9", "--on", "fence", "--on", "fense", "--on", "daisy-1;fence")
                        .err())
                .matches(
                        "duskloom strip: --on: there is no [^;]*\"daisy-9\";[^;]*; --on: there is no [^;]*\"fense\";[^;]*; "
                                + "--on: there is no [^\n]*\"daisy-1;fence\"; type --on before each[^\n]*\n'duskloom[^\n]*\n");
        Ran wrong = strip("x.png", "--on", "daisy-9");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("--on: there is no ").contains("\"daisy-9\"");
    }

    /** W3C PNG: width and height are the first two fields of the header chunk, bytes 16 to 23. */
    @Test
    void columnsAndPixelSizeShapeTheSheet() {
        strip("row.png", "--count", "4", "--columns", "4", "--pixel-size", "4");
        strip("column.png", "--count", "4", "--columns", "1", "--pixel-size", "4");
        strip("large.png", "--count", "4", "--columns", "4", "--pixel-size", "8");
        assertThat(width("row.png")).isGreaterThan(3 * width("column.png"));
        assertThat(height("column.png")).isGreaterThan(2 * height("row.png"));
        assertThat(width("large.png")).isGreaterThan(width("row.png"));
    }

    /** 80 columns and 20 rows: cells that are 10 dots larger add 800 by 200 dots, and so do 40 columns of 20 dots. */
    @Test
    void aTimeStripHasAColumnForEachFrame() {
        strip("small.png", "--kind", "time", "--pixel-size", "10");
        strip("large.png", "--kind", "time", "--pixel-size", "20");
        assertThat(width("large.png") - width("small.png")).isEqualTo(800);
        assertThat(height("large.png") - height("small.png")).isEqualTo(200);
        strip("half.png", "--kind", "time", "--pixel-size", "20", "--count", "40");
        assertThat(width("large.png") - width("half.png")).isEqualTo(800);
        strip("part.png", "--kind", "time", "--pixel-size", "20", "--from", "1s");
        assertThat(width("large.png") - width("part.png")).isEqualTo(800);
    }

    /** Of 70,000 pixels every fifth is shown, and every frame. */
    @Test
    void ofManyPixelsATimeStripShowsSomeAndAllFrames() throws IOException {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int pixel = 0; pixel < 70_000; pixel++) {
            int first = pixel < 10 ? 0 : pixel < 20 ? 10 : 20;
            csv.append(first == 0 ? "daisy-1" : first == 10 ? "daisy-2" : "fence");
            csv.append(',').append(pixel + 1 - first).append(',').append(pixel).append(",0\n");
        }
        Files.writeString(folder.resolve("map.csv"), csv);
        Ran ran = strip("time.png", "--kind", "time", "--to", "50f");
        assertThat(ran.err()).contains(": 50 frames, 70000 pixels");
        strip("exact.png", "--kind", "time", "--to", "50f", "--pixel-size", "1");
        assertThat(height("exact.png") - height("time.png")).isEqualTo(70_000 - 14_000);
    }

    @Test
    void namesTheProps() {
        strip("plain.png", "--count", "1");
        strip("names.png", "--count", "1", "--names");
        assertThat(bytes("names.png")).isNotEqualTo(bytes("plain.png"));
        assertThat(width("names.png")).isEqualTo(width("plain.png"));
    }

    @Test
    void aPictureThatExistsIsNotTouched() throws IOException {
        Path old = Files.writeString(folder.resolve("strip.png"), "old");
        String said = "duskloom: strip.png exists already; use --force to replace it\n";
        assertThat(strip("strip.png").without(folder)).isEqualTo(new Ran(1, "", said));
        assertThat(old).hasContent("old");
        assertThat(strip("strip.png", "--force").code()).isZero();
        assertThat(width("strip.png")).isPositive();
    }

    @Test
    void anInputIsNeverReplaced() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve("map.csv"));
        Links.hard(folder.resolve("map.png"), folder.resolve("map.csv"));
        Ran ran = strip("map.png", "--force").without(folder);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith("duskloom strip: map.png is an input (map.csv); give the output a name");
        assertThat(folder.resolve("map.csv")).hasBinaryContent(before);
    }

    @Test
    void aPictureThatWouldBeTooLargeIsAMatterOfTheOptions() throws IOException {
        Ran ran = strip("strip.png", "--columns", "1", "--pixel-size", "100", "--count", "80");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).startsWith("duskloom strip: a strip of 80 moments would be ");
        try (Stream<Path> entries = Files.list(folder)) {
            assertThat(entries.map(Path::getFileName).map(Path::toString))
                    .containsExactlyInAnyOrder("map.csv", "show.json");
        }
    }

    private Ran strip(String name, String... options) {
        Object[] arguments = Stream.concat(Stream.of("strip", show, "-o", folder.resolve(name)), Stream.of(options))
                .toArray();
        return Ran.with(arguments);
    }

    private byte[] bytes(String name) {
        try {
            return Files.readAllBytes(folder.resolve(name));
        } catch (IOException fault) {
            throw new AssertionError(fault);
        }
    }

    private int width(String name) {
        return ByteBuffer.wrap(bytes(name)).getInt(16);
    }

    private int height(String name) {
        return ByteBuffer.wrap(bytes(name)).getInt(20);
    }
}
