package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Inputs that are as large as they may be are refused, or done, by a JVM that may use 512 MB. */
@Tag("faults")
class BudgetsTest {
    private static final List<String> BUDGET = List.of("-Xmx512m", "-XX:TieredStopAtLevel=1");
    private static final int MANY_CHUNKS = 20_000_000;
    private static final int MANY_WARNINGS = 1_000_000;

    @TempDir
    private Path folder;

    /** 240 MB of chunks that a reader passes over: ancillary ones, by PNG, third edition, 5.4. */
    @Test
    void twentyMillionEmptyChunksOfNoUseAreRead() throws Exception {
        picture("none");
        Ran ran = program("render", image(), "-o", folder.resolve("out"));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("4 frames");
    }

    /** The same of chunks of data, each of which might hold some. */
    @Test
    void twentyMillionEmptyChunksOfDataAreRefused() throws Exception {
        picture("IDAT");
        Ran ran = program("check", image());
        assertThat(ran.err()).contains("\"image.png\" has more than 262144 chunks; save it anew");
        assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    }

    /** The longest text that there may be, with everything that a setting of it can change, on ten thousand pixels. */
    @Test
    void fiveHundredLettersMove() throws Exception {
        map(100, 100);
        Path show = show("""
                {"on": "*", "effect": "lettering", "with": {"text": "%s", "every": "1s", "smooth": true, "thickness": 8,
                  "size": {"keys": [["0s", 0.2], ["1s", 10]]}, "turn": {"keys": [["0s", 0], ["1s", 360]]},
                  "up": {"keys": [["0s", -1], ["1s", 1]]},
                  "palette": {"keys": [["0s", ["red", "gold"]], ["1s", ["blue", "lime"]]]},
                  "outline": {"keys": [["0s", ["black", "white"]], ["1s", ["navy", "pink"]]]}}}
                """.formatted("Midsummer ".repeat(50)));
        Ran ran = program("render", show, "-o", folder.resolve("out"), "--threads", "8");
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    /** Of a label track, none of whose labels has a text. */
    @Test
    void aMillionLabelsWithoutTextAreToldShortly() throws Exception {
        map(2, 1);
        Path show = show("{\"on\": \"*\", \"effect\": \"wash\"}");
        Files.writeString(show, Files.readString(show).replace("\"rate\"", "\"markers\": \"song.txt\", \"rate\""));
        Files.writeString(folder.resolve("song.txt"), "0\t0\tbar\n1\t1\tbeat\n" + "1.5\t1.5\t\n".repeat(MANY_WARNINGS));
        toldShortly(program("check", show));
    }

    /** Of numbers so small that they read as 0; one file may have a million signs and values. */
    @Test
    void aMillionNumbersThatAreTooSmallAreToldShortly() throws Exception {
        Path display = Files.writeString(
                folder.resolve("display.json"),
                "{\"duskloom\": \"display/1\", \"shapes\": [" + "1e-400,\n".repeat(MANY_WARNINGS - 100) + "1]}");
        Ran ran = program("check", display);
        toldShortly(ran);
        assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    }

    /** A quarter of a million pixels in 800 frames are more bytes than the budget: a picture for each 16,000. */
    @Test
    void tilesHoldNoMoreThanABand() throws Exception {
        map(500, 500);
        Path show = show("{\"on\": \"*\", \"effect\": \"sweep\"}");
        Files.writeString(show, Files.readString(show).replace("\"1s\"", "\"200s\""));
        Ran ran = program("render", show, "-o", folder.resolve("out"), "--tiles", "--strip", "--force");
        assertThat(ran.code()).as(ran.err()).isZero();
        try (Stream<Path> pictures = Files.list(folder.resolve("out/time"))) {
            assertThat(pictures).hasSize(16);
        }
    }

    private static void toldShortly(Ran ran) {
        String told = ran.err() + ran.out();
        assertThat(told.lines().count())
                .as(told.substring(0, Math.min(2_000, told.length())))
                .isBetween(100L, 300L);
        assertThat(told)
                .contains("warning: ")
                .containsPattern("[0-9]{6} more warnings")
                .doesNotContain("memory");
    }

    private Path image() throws IOException {
        map(2, 1);
        return show("{\"on\": \"*\", \"effect\": \"image\", \"with\": {\"file\": \"image.png\"}}");
    }

    private Path show(String cue) throws IOException {
        return Files.writeString(
                folder.resolve("show.json"),
                "{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"rate\": 4, \"length\": \"1s\", "
                        + "\"layers\": [{\"cues\": [" + cue + "]}]}");
    }

    private void map(int columns, int rows) throws IOException {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int i = 0; i < columns * rows; i++) {
            csv.append("wall,")
                    .append(i + 1)
                    .append(',')
                    .append(i % columns)
                    .append(',')
                    .append(i / columns)
                    .append('\n');
        }
        Files.writeString(folder.resolve("map.csv"), csv);
    }

    /** One grey pixel, behind very many empty chunks. */
    private void picture(String type) throws IOException {
        byte[] empty = chunk(type, new byte[0]);
        ByteArrayOutputStream thousand = new ByteArrayOutputStream();
        for (int i = 0; i < 1_000; i++) {
            thousand.write(empty);
        }
        ByteArrayOutputStream rows = new ByteArrayOutputStream();
        try (OutputStream deflating = new DeflaterOutputStream(rows)) {
            deflating.write(new byte[] {0, 99});
        }
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(folder.resolve("image.png")))) {
            out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
            out.write(chunk("IHDR", new byte[] {0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0}));
            for (int i = 0; i < MANY_CHUNKS / 1_000; i++) {
                out.write(thousand.toByteArray());
            }
            out.write(chunk("IDAT", rows.toByteArray()));
            out.write(chunk("IEND", new byte[0]));
        }
    }

    private static byte[] chunk(String type, byte[] data) throws IOException {
        CRC32 checksum = new CRC32();
        checksum.update(type.getBytes(StandardCharsets.US_ASCII));
        checksum.update(data);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(data.length);
        out.write(type.getBytes(StandardCharsets.US_ASCII));
        out.write(data);
        out.writeInt((int) checksum.getValue());
        return bytes.toByteArray();
    }

    private Ran program(Object... arguments) throws IOException, InterruptedException {
        Path said = folder.resolve("said");
        Path errors = folder.resolve("errors");
        Process run = ProgramProcess.of(BUDGET, arguments)
                .redirectOutput(said.toFile())
                .redirectError(errors.toFile())
                .start();
        assertThat(run.waitFor(10, TimeUnit.MINUTES)).isTrue();
        return new Ran(run.exitValue(), Files.readString(said), Files.readString(errors));
    }
}
