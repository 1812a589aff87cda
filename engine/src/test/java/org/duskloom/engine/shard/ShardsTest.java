package org.duskloom.engine.shard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.format.FinishedFrames;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.format.FrameOutputs;
import org.duskloom.engine.format.NpyKind;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.format.OutputRegistry;
import org.duskloom.engine.format.RgbKind;
import org.duskloom.engine.format.SinglesKind;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A show of 30 frames and two pixels in pieces: byte i of frame n is 7n + i. */
class ShardsTest {
    private static final OutputRegistry KINDS =
            new OutputRegistry(List.of(new RgbKind(), new NpyKind(), new SinglesKind()));
    private static final Origin ORIGIN = new Origin("9.9", List.of(new Origin.Input("show.json", "ab".repeat(32))));

    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    private record Ramp(RunInfo info) implements FrameSource {
        Ramp(String title) {
            this(RunInfo.ofWhole(
                    title,
                    FrameRate.of(40),
                    30,
                    new FramePixels(2, List.of(new PropSpan("fence", 0, 2)), Optional.empty())));
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) -> {
                for (int i = 0; i < 6; i++) {
                    rgb[offset + i] = (byte) (7 * frame + i);
                }
            };
        }
    }

    private Path render(String name, long from, long end, OutputKind... kinds) throws Exception {
        return render(new Ramp("ramp"), ORIGIN, name, from, end, kinds);
    }

    private Path render(FrameSource source, Origin origin, String name, long from, long end, OutputKind... kinds)
            throws Exception {
        FrameRun run = new FrameRun(source, FrameList.of(new FrameSpan(from, end)), 1);
        OutputFolder into = new OutputFolder(folder.resolve(name), IfExists.REFUSE, target -> {});
        Files.createDirectories(folder.resolve(name));
        try (FrameOutputs outputs = new FrameOutputs(into, List.of(kinds), run.info(), origin)) {
            run.into(outputs.sinks(), Progress.SILENT);
            outputs.publish();
        }
        return folder.resolve(name);
    }

    private List<Shard> read(Path... folders) {
        List<Shard> shards = new ArrayList<>();
        for (Path each : folders) {
            Shard.in(each, problems).ifPresent(shards::add);
        }
        return shards;
    }

    private Optional<Shards> together(Path... folders) {
        return Shards.of(read(folders), KINDS, problems);
    }

    private boolean join(Shards shards, Progress progress) throws IOException {
        Files.createDirectories(folder.resolve("joined"));
        OutputFolder into = new OutputFolder(folder.resolve("joined"), IfExists.REFUSE, target -> {});
        try (Join join = new Join(shards, KINDS, into, problems)) {
            return join.run(progress);
        }
    }

    private List<String> told() {
        return problems.inFileOrder().stream()
                .map(problem -> problem.toString().replace(folder + "/", ""))
                .toList();
    }

    private List<String> namesIn(String name) throws IOException {
        try (var files = Files.walk(folder.resolve(name))) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.resolve(name).relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    /** Given in any order: what one run writes, byte for byte, and what a reader takes back. */
    @ParameterizedTest
    @CsvSource({"1, 29", "10, 20", "15, 16"})
    void theWholeIsWhatOneRunWrites(long first, long second) throws Exception {
        OutputKind[] kinds = {new RgbKind(), new NpyKind(), new SinglesKind()};
        Path whole = render("whole", 0, 30, kinds);
        Shards shards = together(
                        render("c", second, 30, kinds), render("a", 0, first, kinds), render("b", first, second, kinds))
                .orElseThrow();
        assertThat(shards.shards())
                .extracting(shard -> shard.folder().getFileName().toString())
                .containsExactly("a", "b", "c");
        assertThat(shards.frameCount()).isEqualTo(30);
        assertThat(shards.bytes()).isEqualTo(3 * 30 * 6 + 3 * 128);
        List<Long> done = new ArrayList<>();
        assertThat(join(shards, (now, total) -> {
                    assertThat(total).isEqualTo(90);
                    done.add(now);
                }))
                .isTrue();
        assertThat(done).isSorted().endsWith(90L);
        assertThat(namesIn("joined")).isEqualTo(namesIn("whole")).hasSize(3 + 30);
        for (String name : namesIn("whole")) {
            assertThat(folder.resolve("joined").resolve(name)).hasSameBinaryContentAs(whole.resolve(name));
        }
        assertThat(FinishedFrames.in(folder.resolve("joined"), problems)).isPresent();
        assertThat(told()).isEmpty();
    }

    @Test
    void everyFrameIsThereOnce() throws Exception {
        Path a = render("a", 2, 10, new RgbKind());
        Path b = render("b", 8, 20, new RgbKind());
        assertThat(together(a, b)).isEmpty();
        assertThat(told())
                .anyMatch(line -> line.contains("frames 0..2 are in no shard"))
                .anyMatch(line -> line.contains("frames 8..10 are in a too"))
                .anyMatch(line -> line.contains("frames 20..30 are in no shard") && line.contains("--frames 20..30"))
                .hasSize(3);
    }

    @Test
    void oneGivenTwiceIsNamed() throws Exception {
        Path a = render("a", 0, 30, new RgbKind());
        assertThat(together(a, a)).isEmpty();
        assertThat(told()).singleElement().asString().contains("this shard is given twice");
    }

    /** The whole of a show within another: its end does not hide that later frames are there twice. */
    @Test
    void aShardWithinAnotherIsFound() throws Exception {
        assertThat(together(
                        render("a", 0, 20, new RgbKind()),
                        render("b", 5, 8, new RgbKind()),
                        render("c", 18, 30, new RgbKind())))
                .isEmpty();
        assertThat(told())
                .anyMatch(line -> line.contains("frames 5..8 are in a too"))
                .anyMatch(line -> line.contains("frames 18..20 are in a too"))
                .hasSize(2);
    }

    @Test
    void shardsOfAnotherRenderingAreToldApart() throws Exception {
        Path a = render("a", 0, 10, new RgbKind());
        Origin changed = new Origin("9.8", List.of(new Origin.Input("show.json", "cd".repeat(32))));
        Path b = render(new Ramp("slope"), changed, "b", 10, 30, new RgbKind());
        assertThat(together(a, b)).isEmpty();
        assertThat(told())
                .anyMatch(line -> line.contains("the version of duskloom is 9.8 here and 9.9 there"))
                .anyMatch(line -> line.contains("the title is \"slope\" here and \"ramp\" there"))
                .anyMatch(line -> line.contains("\"show.json\" had other bytes"))
                .hasSize(3);
    }

    @Test
    void anInputOfOneOnlyIsToldApart() throws Exception {
        Path a = render("a", 0, 10, new RgbKind());
        Path b = render(new Ramp("ramp"), new Origin("9.9", List.of()), "b", 10, 30, new RgbKind());
        assertThat(together(a, b)).isEmpty();
        assertThat(told()).singleElement().asString().contains("\"show.json\" was read for one of them only");
    }

    @Test
    void allHaveTheSameFiles() throws Exception {
        Path a = render("a", 0, 10, new RgbKind());
        Path b = render("b", 10, 30, new RgbKind(), new NpyKind());
        assertThat(together(a, b)).isEmpty();
        assertThat(told()).singleElement().asString().contains("--as: here it was rgb,npy, there rgb");
    }

    @ParameterizedTest
    @ValueSource(strings = {"frames.rgb", "frames/"})
    void aChangedByteIsFoundAndNothingIsFinal(String file) throws Exception {
        Path a = render("a", 0, 10, new RgbKind(), new SinglesKind());
        Path b = render("b", 10, 30, new RgbKind(), new SinglesKind());
        Path target = file.endsWith("/") ? single(b, 2) : b.resolve(file);
        byte[] bytes = Files.readAllBytes(target);
        bytes[3]++;
        Files.write(target, bytes);
        Shards shards = together(a, b).orElseThrow();
        assertThat(join(shards, Progress.SILENT)).isFalse();
        assertThat(told()).singleElement().asString().contains("it is not what frames.json beside it was written for");
        assertThat(namesIn("joined")).isEmpty();
    }

    private static Path single(Path shard, int place) throws IOException {
        try (var files = Files.list(shard.resolve("frames"))) {
            return files.sorted().skip(place).findFirst().orElseThrow();
        }
    }

    /** A frame that lost a byte to its neighbour: all of the folder has as many bytes as before. */
    @Test
    void aFrameOfAnotherLengthIsFound() throws Exception {
        Path a = render("a", 0, 30, new SinglesKind());
        Files.write(single(a, 2), new byte[5]);
        Files.write(single(a, 0), new byte[7]);
        assertThat(join(together(a).orElseThrow(), Progress.SILENT)).isFalse();
        assertThat(told()).singleElement().asString().contains("it has 7 bytes, and a frame has 6");
        assertThat(namesIn("joined")).isEmpty();
    }

    @Test
    void aFrameUnderAnotherNameIsMissed() throws Exception {
        Path a = render("a", 0, 30, new SinglesKind());
        Path file = single(a, 2);
        Files.move(file, file.resolveSibling("other.rgb"));
        assertThat(join(together(a).orElseThrow(), Progress.SILENT)).isFalse();
        assertThat(told()).singleElement().asString().contains("there is no such file, and frame 2 is to be in it");
    }

    /** The header of a NumPy file says how many frames follow: of another shape it is no file of these frames. */
    @Test
    void anotherHeaderIsRefused() throws Exception {
        Path a = render("a", 0, 30, new NpyKind());
        byte[] bytes = Files.readAllBytes(a.resolve("frames.npy"));
        bytes[60] ^= 1;
        Files.write(a.resolve("frames.npy"), bytes);
        assertThat(join(together(a).orElseThrow(), Progress.SILENT)).isFalse();
        assertThat(told()).anyMatch(line -> line.contains("it does not begin as such a file of these frames does"));
        assertThat(namesIn("joined")).isEmpty();
    }

    @Test
    void aFileThatWasCutOrLostIsFoundBeforeAnythingIsDone() throws Exception {
        Path cut = render("cut", 0, 10, new RgbKind());
        Files.write(cut.resolve("frames.rgb"), new byte[59]);
        Path lost = render("lost", 0, 10, new RgbKind());
        Files.delete(lost.resolve("frames.rgb"));
        assertThat(read(cut, lost, folder.resolve("nowhere"))).isEmpty();
        assertThat(told())
                .anyMatch(line -> line.contains("it has 59 bytes, and frames.json beside it says 60"))
                .anyMatch(line -> line.contains("there is no such file, and frames.json beside it speaks of it"))
                .hasSize(3);
    }

    /** A file that gets shorter between the look at it and the copying. */
    @Test
    void aFileThatShrinksMeanwhileIsAFailure() throws Exception {
        Path a = render("a", 0, 30, new RgbKind());
        Shards shards = together(a).orElseThrow();
        Files.write(a.resolve("frames.rgb"), new byte[100]);
        assertThatThrownBy(() -> join(shards, Progress.SILENT))
                .isInstanceOf(IOException.class)
                .hasMessageEndingWith("frames.rgb became shorter while it was read");
        assertThat(namesIn("joined")).isEmpty();
    }

    @Test
    void whatIsReadIsListed() throws Exception {
        Path a = render("a", 0, 30, new RgbKind(), new NpyKind());
        assertThat(read(a).get(0).inputs())
                .containsExactlyInAnyOrder(
                        a.resolve(FrameManifest.FILE), a.resolve("frames.rgb"), a.resolve("frames.npy"));
    }
}
