package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProofCommandTest {
    private static final int PIXELS = 18;

    /**
     * 4 s of first pixels, three runs of 6 s, a second for each of 3 props, 2 s for each of 2 parts and 2 groups: 33 s.
     */
    private static final int FRAMES = 41 * 20;

    @TempDir
    private Path folder;

    private Ran ran;

    @BeforeEach
    void prove() throws IOException {
        ran = Ran.with("proof", Garden.display(folder), "-o", folder.resolve("out"))
                .without(folder);
    }

    @Test
    void writesFramesStripAndSteps() throws IOException {
        assertThat(ran).isEqualTo(new Ran(0, "", "out: 15 steps, 820 frames\n"));
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("frames.rgb", "frames.json", "strip.png", "steps.txt");
        }
        assertThat(ImageIO.read(folder.resolve("out/strip.png").toFile()).getWidth())
                .isPositive();
    }

    @Test
    void theManifestCountsTheFrames() throws IOException {
        assertThat(frames()).hasSize(FRAMES * PIXELS * 3);
        assertThat(folder.resolve("out/frames.json"))
                .content()
                .contains(
                        "\"rate\": {\"num\": 20, \"den\": 1}",
                        "\"frames\": 820,",
                        "\"pixels\": 18,",
                        "{\"name\": \"daisy-2\", \"first\": 6, \"count\": 6}",
                        "{\"file\": \"display.json\", \"sha256\": \"");
    }

    @Test
    void theTextListsEveryStepWithItsTime() throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("out/steps.txt"));
        assertThat(lines.get(0)).isEqualTo("What the proof shows, at 20 frames a second.");
        assertThat(lines.stream()
                        .skip(6)
                        .filter(line -> line.contains(" %  "))
                        .map(line -> line.strip().split(" {2,}"))
                        .map(cells -> cells[0] + ": " + cells[1]))
                .containsExactly(
                        "0 s: first pixel",
                        "4 s: running index",
                        "10 s: stage up",
                        "16 s: own up",
                        "22 s: prop daisy-1",
                        "23 s: prop daisy-2",
                        "24 s: prop fence",
                        "25 s: part rim",
                        "27 s: part top",
                        "29 s: group daisies",
                        "31 s: group garden",
                        "33 s: colour red",
                        "35 s: colour green",
                        "37 s: colour blue",
                        "39 s: colour white");
    }

    /**
     * In the first step 18 pixels are lit: three white, three red (0xE01010) and twelve dim (0x14 each), together 2295
     * + 768 + 720 of 13,770. In the step of a daisy six are amber (0xFFA000): 2490. In that of the garden all are lit
     * at its end, six of them white: 4590 + 4980, which is 69.5 %.
     */
    @Test
    void theTextSaysHowMuchIsLit() throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("out/steps.txt"));
        assertThat(lines.get(4))
                .isEqualTo(
                        "The most is 70 % of that, in \"group garden\": wire, fuses and supplies must bear it. Nothing flashes.");
        assertThat(lines.get(6)).matches(" +0 s  first pixel +18 +28 %  on every prop .*");
        assertThat(lines.get(10)).matches(" +22 s  prop daisy-1 +6 +19 %  only daisy-1 is lit");
        assertThat(lines.get(16))
                .contains("The next step draws the most current of all: watch wire, plugs and supplies");
        assertThat(lines.get(17)).contains("local codes and licensed practice");
        assertThat(lines.get(18)).matches(" +31 s  group garden +18 +70 %  all .*");
        // 89 of 255 on three channels of every pixel.
        assertThat(lines.get(22)).matches(" +39 s  colour white +18 +35 %  every pixel is white, .*");
    }

    /** 40 frames in which the fence alone is red, at the code of a tenth of the light. */
    @Test
    void aStepCanBeHeldOnSomeProps() throws IOException {
        Ran held = Ran.with(
                        "proof",
                        folder.resolve("display.json"),
                        "-o",
                        folder.resolve("held"),
                        "--step",
                        "Colour red",
                        "--only",
                        "fence")
                .without(folder);
        assertThat(held).isEqualTo(new Ran(0, "", "held: 1 step, 40 frames\n"));
        byte[] rgb = Files.readAllBytes(folder.resolve("held/frames.rgb"));
        for (int i = 0; i < rgb.length; i += 3) {
            int pixel = i / 3 % PIXELS;
            assertThat(rgb[i]).isEqualTo((byte) (pixel < 12 ? 0 : 89));
            assertThat(rgb[i + 1] | rgb[i + 2]).isZero();
        }
    }

    /**
     * 4 s of first pixels, three runs of 6 s, 1 s for the fence, 2 s for its group and 2 s for each of 4 colours: 33 s.
     */
    @Test
    void stepsThatLightNothingAreLeftOut() {
        Ran some = Ran.with("proof", folder.resolve("display.json"), "-o", folder.resolve("some"), "--only", "fence")
                .without(folder);
        assertThat(some.err()).isEqualTo("some: 10 steps, 660 frames\n");
    }

    /** A map with an error is no map to hang lights by: nothing is written, with --find neither. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            a,1,0,0; a,3,200,0          | pixel 2
            a,1,0,0; a,2,1,0; a,2,2,0   | 2
            a,1,0,0; a,2,1. Feb,0       | "1. Feb"
            a,1,0,0; a,2,100            | y
            """)
    void aBadMapWritesNothing(String rows, String told) throws IOException {
        Path map = Files.writeString(folder.resolve("bad.csv"), "prop,pixel,x,y\n" + rows.replace("; ", "\n") + "\n");
        for (List<String> more : List.of(List.<String>of(), List.of("--find"))) {
            List<Object> words = new ArrayList<>(List.of("proof", map, "-o", folder.resolve("none")));
            words.addAll(more);
            Ran bad = Ran.with(words.toArray()).without(folder);
            assertThat(bad.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(bad.err()).contains("bad.csv:").contains("error: ").contains(told);
            assertThat(folder.resolve("none")).doesNotExist();
        }
    }

    /** Pixel after pixel in the order of the port, and red alone, which on a wire of GRB comes second. */
    @Test
    void isWrittenForThePortsToo() throws IOException {
        Path display = folder.resolve("display.json");
        Files.writeString(
                display,
                Files.readString(display)
                        .replaceFirst(
                                "\"groups\"",
                                "\"ports\": [{\"name\": \"left\", \"chain\": [\"fence\", \"daisy-1\"],"
                                        + " \"colors\": \"GRB\", \"curve\": \"codes\"}], \"groups\""));
        Path wired = folder.resolve("wired");
        Ran held = Ran.with("proof", display, "-o", wired, "--as", "npy,ports,packets", "--step", "colour red");
        assertThat(held.code()).as(held.err()).isZero();
        try (Stream<Path> files = Files.list(wired)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "frames.npy",
                            "frames.json",
                            "packets.pcap",
                            "patch.csv",
                            "ports",
                            "strip.png",
                            "steps.txt");
        }
        byte[] left = Files.readAllBytes(wired.resolve("ports/left.bin"));
        assertThat(left).hasSize(40 * 12 * 3);
        for (int i = 0; i < left.length; i++) {
            assertThat(left[i]).isEqualTo((byte) (i % 3 == 1 ? 89 : 0));
        }
    }

    @Test
    void portsAreNeededForWhatIsMadeForThem() throws IOException {
        Path out = folder.resolve("x");
        Ran none = Ran.with("proof", folder.resolve("display.json"), "-o", out, "--as", "rgb,packets");
        assertThat(none.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(none.err()).contains("the display has no \"ports\", and --as packets needs them");
        Path map = Files.writeString(folder.resolve("map.csv"), "prop,pixel,x,y\na,1,0,0\na,2,1,0\n");
        Ran bare = Ran.with("proof", map, "-o", out, "--find", "--as", "ports");
        assertThat(bare.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(bare.err()).contains("a pixel map has no ports, and --as ports needs them");
        Ran line = Ran.with("proof", "--pixels", "20", "-o", out, "--find", "--as", "ports");
        assertThat(line.code()).isEqualTo(ExitCode.USAGE);
        assertThat(line.err()).contains("--as ports needs a display with \"ports\", and --pixels has none");
        assertThat(out).doesNotExist();
    }

    @Test
    void namesWhatIsMeantByAWrongStepOrAddress() {
        Path display = folder.resolve("display.json");
        Ran step = Ran.with("proof", display, "-o", folder.resolve("x"), "--step", "colour rad");
        assertThat(step.code()).isEqualTo(2);
        assertThat(step.err()).contains("--step: there is no step \"colour rad\"; did you mean \"colour red\"?");
        Ran only = Ran.with("proof", display, "-o", folder.resolve("x"), "--only", "fense");
        assertThat(only.code()).isEqualTo(2);
        assertThat(only.err()).contains("--only: there is no ").contains("\"fense\"");
        assertThat(folder.resolve("x")).doesNotExist();
    }

    /** From a minute on as clocks show it, as in the strip: 70 parts of two seconds, the first from 23 s on. */
    @Test
    void timesOfAMinuteAndMoreAreMinutesAndSeconds() throws IOException {
        StringBuilder parts = new StringBuilder();
        for (int i = 1; i <= 70; i++) {
            parts.append(i == 1 ? "" : ", ").append("\"p" + i + "\": \"1\"");
        }
        Path display = Files.writeString(folder.resolve("long.json"), """
                {"duskloom": "display/1", "units": "mm",
                 "shapes": {"a": {"build": [{"ring": {"count": 6, "radius": 100}}], "parts": {%s}}},
                 "props": [{"name": "a", "shape": "a", "at": [0, 0]}]}
                """.formatted(parts));
        assertThat(Ran.with("proof", display, "-o", folder.resolve("long")).code())
                .isZero();
        assertThat(Files.readAllLines(folder.resolve("long/steps.txt")).stream()
                        .skip(6)
                        .filter(line -> line.contains(" %  "))
                        .map(line -> line.strip().split(" {2,}")[0]))
                .hasSize(79)
                .startsWith("0 s", "4 s", "10 s", "16 s", "22 s", "23 s", "25 s")
                .contains("59 s", "1:01", "1:59", "2:01")
                .endsWith("2:41", "2:43", "2:45", "2:47", "2:49");
    }

    /** Frame 0: of every six pixels the first is white, the last red. From 23 s on, only the second daisy is lit. */
    @Test
    void theFramesShowWhatTheTextSays() throws IOException {
        for (int prop = 0; prop < 3; prop++) {
            int[] first = pixel(0, 6 * prop);
            int[] last = pixel(0, 6 * prop + 5);
            assertThat(first).containsOnly(first[0]);
            assertThat(first[0]).isGreaterThan(100);
            assertThat(last[0]).isGreaterThan(100);
            assertThat(last[0]).isGreaterThan(3 * Math.max(last[1], last[2]));
            assertThat(pixel(0, 6 * prop + 1)[0]).isBetween(1, 60);
        }
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            int sum = Arrays.stream(pixel(23 * 20 + 10, pixel)).sum();
            assertThat(sum > 0).as("pixel %d", pixel).isEqualTo(pixel / 6 == 1);
        }
    }

    private byte[] frames() throws IOException {
        return Files.readAllBytes(folder.resolve("out/frames.rgb"));
    }

    private int[] pixel(int frame, int pixel) throws IOException {
        byte[] rgb = frames();
        int at = 3 * (PIXELS * frame + pixel);
        return new int[] {rgb[at] & 0xFF, rgb[at + 1] & 0xFF, rgb[at + 2] & 0xFF};
    }
}
