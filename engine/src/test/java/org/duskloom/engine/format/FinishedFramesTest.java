package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Frames that were written once are found again, byte for byte; what was changed since is told. */
class FinishedFramesTest {
    private static final int PIXELS = 5;
    private static final long SHOW_FRAMES = 400;
    private static final FrameSpan SPAN = new FrameSpan(100, 290);

    @TempDir
    private Path folder;

    /** A shard of a show, of bytes that a generator with a known start gives. */
    @BeforeEach
    void writeFrames() throws Exception {
        FrameRun run = new FrameRun(new Noise(), FrameList.of(SPAN), 2);
        OutputFolder out = new OutputFolder(folder, IfExists.REPLACE, target -> {});
        Origin origin = new Origin("9.8", List.of(new Origin.Input("pond.json", "0a".repeat(32))));
        try (FrameOutputs outputs = new FrameOutputs(out, List.of(new RgbKind(), new NpyKind()), run.info(), origin)) {
            run.into(outputs.sinks(), Progress.SILENT);
            outputs.publish();
        }
    }

    @Test
    void whatIsKnownOfThemComesBack() throws IOException {
        FinishedFrames frames = frames();
        RunInfo info = frames.info();
        assertThat(info.title()).isEqualTo("Pond");
        assertThat(info.rate()).isEqualTo(new FrameRate(30000, 1001));
        assertThat(info.frames().first()).isEqualTo(100);
        assertThat(info.frames().count()).isEqualTo(190);
        assertThat(info.showFrames()).isEqualTo(SHOW_FRAMES);
        assertThat(info.pixels().props()).containsExactly(new PropSpan("lily", 0, 2), new PropSpan("rail", 2, 3));
        assertThat(info.pixels().places()).isEmpty();
        assertThat(frames.manifest().origin().version()).isEqualTo("9.8");
        assertThat(frames.manifest().origin().inputs()).hasSize(1);
        assertThat(frames.manifest().files())
                .containsExactly(
                        new WrittenFile("frames.npy", 128 + 190 * 15), new WrittenFile("frames.rgb", 190 * 15));
        assertThat(frames.manifest().json()).isEqualTo(Files.readString(folder.resolve("frames.json")));
    }

    @Test
    void anyFrameCanBeHadInAnyOrder() throws IOException {
        List<Long> order = new ArrayList<>();
        for (long frame = SPAN.firstFrame(); frame < SPAN.endFrameExclusive(); frame++) {
            order.add(frame);
        }
        Collections.shuffle(order, new Random(3));
        byte[] rgb = new byte[3 * PIXELS + 9];
        try (FrameReader reader = frames().reader()) {
            for (long frame : order) {
                Arrays.fill(rgb, (byte) 77);
                reader.read(frame, rgb, 4);
                assertThat(Arrays.copyOfRange(rgb, 4, 19)).as("frame %s", frame).isEqualTo(noise(frame));
                assertThat(Arrays.copyOf(rgb, 4)).containsOnly(77);
                assertThat(Arrays.copyOfRange(rgb, 19, 24)).containsOnly(77);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 99, 290, 399})
    void framesThatAreNotThereAreRefused(long frame) throws IOException {
        try (FrameReader reader = frames().reader()) {
            assertThatThrownBy(() -> reader.read(frame, new byte[15], 0))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("100..290");
        }
    }

    /** They are a source like any other: written again from themselves they are the same, manifest and all. */
    @Test
    void canBeWrittenAgain() throws Exception {
        FinishedFrames frames = frames();
        Path copy = folder.resolve("copy");
        FrameRun run = new FrameRun(frames, frames.info().frames(), 3);
        OutputFolder out = new OutputFolder(copy, IfExists.REFUSE, target -> {});
        try (FrameOutputs outputs = new FrameOutputs(
                out,
                List.of(new NpyKind(), new RgbKind()),
                run.info(),
                frames.manifest().origin())) {
            run.into(outputs.sinks(), Progress.SILENT);
            outputs.publish();
        }
        for (String name : List.of("frames.rgb", "frames.npy", "frames.json")) {
            assertThat(copy.resolve(name)).hasSameBinaryContentAs(folder.resolve(name));
        }
    }

    @Test
    void theDigestIsChecked() throws IOException {
        Problems problems = new Problems();
        List<Long> told = new ArrayList<>();
        assertThat(frames().check(problems, (done, total) -> told.add(done))).isTrue();
        assertThat(problems.inFileOrder()).isEmpty();
        assertThat(told).endsWith(190L);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1400, 2849})
    void oneChangedBitIsTold(int at) throws IOException {
        Path file = folder.resolve("frames.rgb");
        byte[] bytes = Files.readAllBytes(file);
        bytes[at] ^= 1;
        Files.write(file, bytes);
        Problems problems = new Problems();
        assertThat(frames().check(problems, Progress.SILENT)).isFalse();
        assertThat(problems.inFileOrder()).hasSize(1).first().satisfies(problem -> {
            assertThat(problem.message()).contains("frames.rgb is not what this was written for: its SHA-256 is ");
            assertThat(problem.location().file()).endsWith("frames.json");
            assertThat(problem.location().line()).isEqualTo(10);
        });
    }

    @ParameterizedTest
    @CsvSource({"2849", "2851", "0", "15"})
    void anotherSizeIsTold(int size) throws IOException {
        Path file = folder.resolve("frames.rgb");
        Files.write(file, Arrays.copyOf(Files.readAllBytes(file), size));
        assertThat(refusal(folder))
                .contains(
                        "frames.json:6:13: ",
                        "frames.rgb has " + size + " bytes, and 190 frames of 5 pixels have 2850");
    }

    @Test
    void missingFramesAreTold() throws IOException {
        Files.delete(folder.resolve("frames.rgb"));
        assertThat(refusal(folder)).contains("frames.rgb: there is no such file");
        Files.createDirectory(folder.resolve("frames.rgb"));
        assertThat(refusal(folder)).contains("frames.rgb: there is no such file");
    }

    @Test
    void aFileThatBecomesShorterIsToldWhileReading() throws IOException {
        FinishedFrames frames = frames();
        Files.write(folder.resolve("frames.rgb"), new byte[100]);
        try (FrameReader reader = frames.reader()) {
            assertThatThrownBy(() -> reader.read(289, new byte[15], 0))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("became shorter");
        }
    }

    @Test
    void aMissingManifestIsTold() throws IOException {
        assertThat(refusal(folder.resolve("nowhere"))).contains("frames.json");
    }

    /** What is replaced, by what, where the error stands, and what it says. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    "frames/1"          | "frames/2"            | 2:15  | this is no description of frames: "duskloom" is "frames/2"
                    "frames/1"          | "timeline/1"          | 2:15  | this is no description of frames: "duskloom" is "timeline/1"
                    "frames/1"          | 1                     | 2:15  | "duskloom" of a description of frames must be a text, not the number 1
                    "num": 30000        | "num": 0              | 5:19  | "num" of "rate" of a description of frames is 0
                    "den": 1001         | "den": 1              | 5:11  | 30000/1 frames per second are too many
                    "den": 1001         | "dem": 1001           | 5:26  | "rate" of a description of frames has no field "dem"
                    "frames": 190       | "frames": 0           | 6:13  | "frames" of a description of frames is 0
                    "frames": 190       | "frames": -1          | 6:13  | "frames" of a description of frames is -1
                    "frames": 190       | "frames": 1.5         | 6:13  | "frames" of a description of frames is 1.5
                    "frames": 190       | "frames": 1e30        | 6:13  | "frames" of a description of frames is 1e30
                    "frames": 190       | "frames": 301         | 12:17 | frames 100..401 are not in a show of 400 frames
                    "pixels": 5         | "pixels": 0           | 7:13  | "pixels" of a description of frames is 0
                    "pixels": 5         | "pixels": 715827880   | 7:13  | "pixels" of a description of frames is 715827880
                    "pixels": 5         | "pixels": 6           | 17:12 | the props have 5 pixels, and a frame has 6
                    "RGB"               | "BGR"                 | 8:12  | "order" of a description of frames is "BGR"
                    "srgb"              | "linear"              | 9:15  | "encoding" of a description of frames is "linear"
                    "firstFrame": 100   | "firstFrame": 211     | 12:17 | frames 211..401 are not in a show of 400 frames
                    "first": 2          | "first": 3            | 17:12 | "rail" begins at pixel 3, and the props before it have 2
                    "first": 2          | "first": 1            | 17:12 | "rail" begins at pixel 1, and the props before it have 2
                    "name": "rail"      | "name": "lily"        | 17:12 | two props are called "lily"
                    "count": 3          | "count": 2147483647   | 19:43 | "count" of a prop is 2147483647
                    "frames.npy"        | "../../etc/npy"       | 14:14 | "../../etc/npy" is not the name of a file beside this one
                    "frames.npy"        | "/etc/npy"            | 14:14 | "/etc/npy" is not the name of a file beside this one
                    "frames.rgb"        | "other.rgb"           | 13:12 | the frames were not written as frames.rgb
                    "0a0a0a             | "0A0A0A               | 22:37 | is no SHA-256
                    """)
    void aManifestThatLiesIsToldWhere(String old, String with, String place, String message) throws IOException {
        Path manifest = folder.resolve("frames.json");
        String text = Files.readString(manifest);
        assertThat(text).contains(old);
        int at = text.indexOf(old);
        Files.writeString(manifest, text.substring(0, at) + with + text.substring(at + old.length()));
        assertThat(refusal(folder)).contains("frames.json:" + place + ": ", message);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "{", "[]", "null", "{}", "{\"duskloom\": \"frames/1\"}", "{\"duskloom\": null}", "\u0000"})
    void whatIsNoManifestIsRefused(String text) throws IOException {
        Files.writeString(folder.resolve("frames.json"), text);
        assertThat(refusal(folder)).isNotEmpty();
    }

    /** Every missing field is named in one go. */
    @Test
    void allThatIsMissingIsTold() throws IOException {
        Files.writeString(folder.resolve("frames.json"), "{\"duskloom\": \"frames/1\", \"props\": 3, \"extra\": 1}");
        assertThat(refusal(folder))
                .contains("lacks the field \"version\"", "lacks the field \"sha256\"", "lacks the field \"showFrames\"")
                .contains("\"props\" of a description of frames must be a list", "has no field \"extra\"");
    }

    private FinishedFrames frames() {
        Problems problems = new Problems();
        Optional<FinishedFrames> frames = FinishedFrames.in(folder, problems);
        assertThat(problems.inFileOrder()).isEmpty();
        return frames.orElseThrow();
    }

    /** All errors of a folder that must have some, as a user sees them. */
    private static String refusal(Path folder) {
        Problems problems = new Problems();
        assertThat(FinishedFrames.in(folder, problems)).isEmpty();
        assertThat(problems.hasErrors()).isTrue();
        StringBuilder lines = new StringBuilder();
        problems.inFileOrder().forEach(problem -> lines.append(problem.location() + ": " + problem.message() + "\n"));
        return lines.toString();
    }

    private static byte[] noise(long frame) {
        byte[] rgb = new byte[3 * PIXELS];
        new Random(frame).nextBytes(rgb);
        return rgb;
    }

    private record Noise() implements FrameSource {
        @Override
        public RunInfo info() {
            FramePixels pixels = new FramePixels(
                    PIXELS, List.of(new PropSpan("lily", 0, 2), new PropSpan("rail", 2, 3)), Optional.empty());
            return RunInfo.ofWhole("Pond", new FrameRate(30000, 1001), SHOW_FRAMES, pixels);
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) -> System.arraycopy(noise(frame), 0, rgb, offset, 3 * PIXELS);
        }
    }
}
