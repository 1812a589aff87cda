package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RenderCommandTest {
    @TempDir
    private Path folder;

    @Test
    void writesFramesAndWhatIsKnownOfThem() throws Exception {
        Path show = Garden.in(folder.resolve("allotment garden"));
        Path out = folder.resolve("made/for it");
        Ran ran = Ran.with("render", show, "-o", out);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .matches("\\Q" + out + ": 80 frames, 20 pixels, \\E\\d+\\.\\d s\n"
                        + "flashing: [^\n]*; no guarantee for anyone\n");
        assertThat(RenderRuns.namesIn(out)).containsExactly("frames.json", "frames.rgb");
        byte[] frames = Files.readAllBytes(out.resolve("frames.rgb"));
        assertThat(frames).hasSize(Garden.FRAMES * Garden.PIXELS * 3);
        assertThat(Files.readString(out.resolve("frames.json"))).isEqualTo("""
                {
                  "duskloom": "frames/1",
                  "version": "%s",
                  "title": "Longest day",
                  "rate": {"num": 40, "den": 1},
                  "frames": 80,
                  "pixels": 20,
                  "order": "RGB",
                  "encoding": "srgb",
                  "sha256": "%s",
                  "firstFrame": 0,
                  "showFrames": 80,
                  "files": [
                    {"file": "frames.rgb", "bytes": 4800}
                  ],
                  "props": [
                    {"name": "daisy-1", "first": 0, "count": 6},
                    {"name": "daisy-2", "first": 6, "count": 6},
                    {"name": "fence", "first": 12, "count": 8}
                  ],
                  "inputs": [
                    {"file": "show.json", "sha256": "%s"},
                    {"file": "map.csv", "sha256": "%s"}
                  ]
                }
                """.formatted(
                        Version.number(),
                        sha256(frames),
                        sha256(Files.readAllBytes(show)),
                        sha256(Files.readAllBytes(show.resolveSibling("map.csv")))));
    }

    /** Frames and manifest do not depend on the place from which the show is named, nor on the threads. */
    @Test
    void sameBytesOnAnyNumberOfThreads() throws IOException {
        Path show = Garden.in(folder);
        RenderRuns.render(folder, show, "one", "--threads", "1");
        RenderRuns.render(
                folder,
                show.getParent().resolve("./../" + folder.getFileName() + "/show.json"),
                "four",
                "--threads",
                "4");
        for (String name : List.of("frames.rgb", "frames.json")) {
            assertThat(folder.resolve("four").resolve(name))
                    .hasSameBinaryContentAs(folder.resolve("one").resolve(name));
        }
    }

    @Test
    void partsJoinToTheWhole() throws IOException {
        Path show = Garden.in(folder);
        RenderRuns.render(folder, show, "whole");
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        for (String part : List.of("0..1", "1..33", "33..79", "79..80")) {
            RenderRuns.render(folder, show, "part", "--frames", part, "--force");
            joined.write(Files.readAllBytes(folder.resolve("part/frames.rgb")));
            assertThat(folder.resolve("part/frames.json"))
                    .content()
                    .contains("\"firstFrame\": " + part.substring(0, part.indexOf('.')) + ",");
        }
        assertThat(folder.resolve("whole/frames.rgb")).hasBinaryContent(joined.toByteArray());
    }

    @ParameterizedTest
    @ValueSource(strings = {"frames.rgb", "frames.json", "strip.png", "time.png"})
    void anOutputThatExistsIsNotTouched(String name) throws IOException {
        Path show = Garden.in(folder);
        Path old =
                Files.writeString(Files.createDirectory(folder.resolve("out")).resolve(name), "old");
        Ran ran =
                Ran.with("render", show, "-o", folder.resolve("out"), "--strip").without(folder);
        assertThat(ran)
                .isEqualTo(new Ran(1, "", "duskloom: out/" + name + " exists already; use --force to replace it\n"));
        assertThat(old).hasContent("old");
        assertThat(RenderRuns.namesIn(folder.resolve("out"))).containsExactly(name);
    }

    @Test
    void forceReplaces() throws IOException {
        Path show = Garden.in(folder);
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.writeString(out.resolve("frames.rgb"), "old");
        Files.writeString(out.resolve("frames.json"), "old");
        RenderRuns.render(folder, show, "out", "--force");
        RenderRuns.render(folder, show, "fresh");
        assertThat(out.resolve("frames.rgb")).hasSameBinaryContentAs(folder.resolve("fresh/frames.rgb"));
        assertThat(out.resolve("frames.json")).hasSameBinaryContentAs(folder.resolve("fresh/frames.json"));
        assertThat(RenderRuns.namesIn(out)).containsExactly("frames.json", "frames.rgb");
    }

    /** NumPy Enhancement Proposal 1: the numbers stand behind the header, here one of 128 bytes. */
    @Test
    void writesSeveralKindsInOnePass() throws IOException {
        Path show = Garden.in(folder);
        RenderRuns.render(folder, show, "rgb");
        RenderRuns.render(folder, show, "both", "--as", "npy, rgb");
        assertThat(RenderRuns.namesIn(folder.resolve("both")))
                .containsExactly("frames.json", "frames.npy", "frames.rgb");
        byte[] frames = Files.readAllBytes(folder.resolve("rgb/frames.rgb"));
        assertThat(folder.resolve("both/frames.rgb")).hasBinaryContent(frames);
        byte[] array = Files.readAllBytes(folder.resolve("both/frames.npy"));
        assertThat(new String(array, 0, 128, StandardCharsets.ISO_8859_1))
                .contains("{'descr': '|u1', 'fortran_order': False, 'shape': (80, 20, 3), }");
        assertThat(Arrays.copyOfRange(array, 128, array.length)).isEqualTo(frames);
        assertThat(Files.readString(folder.resolve("both/frames.json"))).contains("""
                  "files": [
                    {"file": "frames.npy", "bytes": 4928},
                    {"file": "frames.rgb", "bytes": 4800}
                  ],
                """);
    }

    @Test
    void singleFilesAreThePiecesOfTheWhole() throws IOException {
        Path show = Garden.in(folder);
        RenderRuns.render(folder, show, "out", "--as", "rgb,singles", "--frames", "60..80");
        byte[] frames = Files.readAllBytes(folder.resolve("out/frames.rgb"));
        List<String> names = RenderRuns.namesIn(folder.resolve("out/frames"));
        assertThat(names).hasSize(20).startsWith("00000060.rgb").endsWith("00000079.rgb");
        for (int i = 0; i < 20; i++) {
            assertThat(folder.resolve("out/frames").resolve(names.get(i)))
                    .hasBinaryContent(Arrays.copyOfRange(frames, 60 * i, 60 * i + 60));
        }
    }

    /** The digest is that of the light, whatever it is written as. */
    @Test
    void theDigestIsTheSameInEveryKind() throws IOException {
        Path show = Garden.in(folder);
        RenderRuns.render(folder, show, "rgb");
        RenderRuns.render(folder, show, "npy", "--as", "npy");
        assertThat(RenderRuns.namesIn(folder.resolve("npy"))).containsExactly("frames.json", "frames.npy");
        assertThat(digestIn("npy")).isEqualTo(digestIn("rgb")).hasSize(64);
    }

    private String digestIn(String name) throws IOException {
        return Files.readString(folder.resolve(name).resolve("frames.json"))
                .split("\"sha256\": \"")[1]
                .substring(0, 64);
    }

    @Test
    void tellsOfFramesThatItDidNotWriteAnew() throws IOException {
        Path show = Garden.in(folder);
        RenderRuns.render(folder, show, "out", "--as", "rgb");
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out"), "--as", "npy", "--force")
                .without(folder);
        assertThat(ran.err()).contains("out/frames.rgb is of an earlier rendering; --as rgb writes it anew\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    rbg     | --as: "rbg" is no kind of output; did you mean "rgb"? allowed: rgb, npy, singles, ports, packets
                    rgb,mp4 | --as: "mp4" is no kind of output; allowed: rgb, npy, singles, ports, packets
                    rgb,rgb | --as: "rgb" stands twice
                    rgb,    | --as: "" is no kind of output; allowed: rgb, npy, singles, ports, packets
                    steps   | --as: "steps" is no kind of output; allowed: rgb, npy, singles, ports, packets
                    """)
    void wordsThatAreNoneAreMisuse(String words, String message) throws IOException {
        Path out = folder.resolve("out");
        Ran ran = Ran.with("render", Garden.in(folder), "-o", out, "--as", words);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("duskloom render: " + message + "\n");
        assertThat(out).doesNotExist();
    }

    @Test
    void oneKindAloneGoesIntoAPipe() throws IOException {
        Ran ran = Ran.with("render", Garden.in(folder), "-o", "-", "--as", "rgb,npy");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains(
                        "-o - is the standard output, which takes one of rgb or npy or packets; for rgb,npy name a folder\n");
    }

    /** What the help says of a kind is what the kind says of itself. */
    @Test
    void theHelpTellsOfEveryKind() {
        String help = Ran.with("render", "--help").out().replaceAll("\\s+", " ");
        for (OutputKind kind : OutputKinds.ALL.kinds()) {
            String line = " " + kind.word() + " " + String.join(", ", kind.files()) + ": " + kind.help() + " ";
            assertThat(help.contains(line)).as(line).isEqualTo(kind.holdsFrames());
        }
    }

    @Test
    void theOutputMustNotBeAFile() throws IOException {
        Path show = Garden.in(folder);
        Path file = Files.writeString(folder.resolve("out"), "old");
        Ran ran = Ran.with("render", show, "-o", file, "--force").without(folder);
        assertThat(ran)
                .isEqualTo(new Ran(1, "", "duskloom: out/frames.rgb cannot be made: out is a file, not a folder\n"));
        assertThat(file).hasContent("old");
    }

    /** Not even with --force, and not through a link. */
    @Test
    void anInputIsNeverReplaced() throws IOException {
        Path garden = folder.resolve("garden");
        Path show = Garden.in(garden);
        Path named = Files.move(show, garden.resolve("frames.json"));
        byte[] before = Files.readAllBytes(named);
        Path link = Links.symbolic(folder.resolve("link"), garden);
        Ran ran = Ran.with("render", named, "-o", link, "--force").without(folder);
        assertThat(ran)
                .isEqualTo(
                        new Ran(
                                2,
                                "",
                                "duskloom render: link/frames.json is an input (garden/frames.json);"
                                        + " give the output a name of its own\n'duskloom render --help' shows what it takes.\n"));
        assertThat(named).hasBinaryContent(before);
        assertThat(RenderRuns.namesIn(garden)).containsExactly("frames.json", "map.csv");
    }

    @Test
    void aBrokenShowTouchesNothing() throws IOException {
        Path show = Garden.in(folder);
        Files.writeString(show, "{");
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out"));
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).endsWith("1 error\n");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    /** 24 hours of 20 pixels at 1000 frames per second would be 5.2 GB; of 2 million, more than any disk has. */
    @Test
    void aDiskThatIsTooSmallIsFoundOutBefore() throws IOException {
        Path show = Garden.in(folder, "24:00:00");
        Files.writeString(show, Files.readString(show).replace("\"rate\": 40", "\"rate\": 1000"));
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (String prop : List.of("daisy-1", "daisy-2", "fence")) {
            for (int pixel = 1; pixel <= 100_000; pixel++) {
                csv.append(prop)
                        .append(',')
                        .append(pixel)
                        .append(',')
                        .append(pixel)
                        .append(",0\n");
            }
        }
        Files.writeString(folder.resolve("map.csv"), csv);
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out")).without(folder);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err().lines().reduce((first, last) -> last).orElse(""))
                .matches("duskloom: cannot write out/frames\\.rgb: it needs 77\\.8 TB, and [0-9.]+ [kMGT]B are free;"
                        + " render fewer --frames, or somewhere else");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    private static String sha256(byte[] bytes) throws Exception {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
}
