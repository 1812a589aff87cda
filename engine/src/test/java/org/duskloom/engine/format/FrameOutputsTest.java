package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What one run writes becomes final together, or not at all. */
@Timeout(60)
class FrameOutputsTest {
    private static final Origin NOBODY = new Origin("", List.of());

    @TempDir
    private Path folder;

    @Test
    void allThatWasAskedForIsThereAndTheManifestSpeaksOfIt() throws Exception {
        run(List.of(new SinglesKind(), new RgbKind(), new NpyKind(), new Doubtful(-1, false)));
        assertThat(namesIn(folder)).containsExactly("doubt.txt", "frames", "frames.json", "frames.npy", "frames.rgb");
        FrameManifest manifest =
                FinishedFrames.in(folder, new Problems()).orElseThrow().manifest();
        assertThat(manifest.files())
                .containsExactly(
                        new WrittenFile("frames.npy", 128 + 300),
                        new WrittenFile("frames.rgb", 300),
                        new WrittenFile("frames/", 300));
    }

    /**
     * A run of which one result fails, early, in the middle or when it is finished: what stood there stays, and nothing
     * is new.
     */
    @ParameterizedTest
    @ValueSource(longs = {0, 40, 99, Long.MAX_VALUE})
    void aSinkThatFailsSpoilsTheWholeRunAndNothingElse(long failsAt) throws Exception {
        Files.writeString(folder.resolve("frames.rgb"), "old");
        Files.writeString(folder.resolve("frames.json"), "old manifest");
        List<OutputKind> kinds = List.of(new RgbKind(), new SinglesKind(), new Doubtful(failsAt, false), new NpyKind());
        assertThatThrownBy(() -> run(kinds)).isInstanceOf(IOException.class).hasMessage("doubt.txt is full");
        assertThat(namesIn(folder)).containsExactly("frames.json", "frames.rgb");
        assertThat(folder.resolve("frames.rgb")).hasContent("old");
        assertThat(folder.resolve("frames.json")).hasContent("old manifest");
    }

    @Test
    void theSameRunWithoutTheFaultReplacesIt() throws Exception {
        Files.writeString(folder.resolve("frames.rgb"), "old");
        Files.writeString(folder.resolve("frames.json"), "old manifest");
        run(List.of(new RgbKind()));
        assertThat(folder.resolve("frames.rgb")).hasSize(300);
        assertThat(FinishedFrames.in(folder, new Problems())).isPresent();
    }

    @Test
    void whatCannotBeBegunLeavesNothing() throws Exception {
        Files.createDirectory(folder.resolve("frames.npy"));
        assertThatThrownBy(() -> run(List.of(new RgbKind(), new NpyKind())))
                .hasMessageContaining("frames.npy is a folder");
        assertThat(namesIn(folder)).containsExactly("frames.npy");
    }

    @Test
    void namesThatAreReadAreNotWritten() throws Exception {
        OutputFolder guarded = new OutputFolder(folder, IfExists.REPLACE, target -> {
            if (target.endsWith("frames.json")) {
                throw new IOException(target.getFileName() + " is an input");
            }
        });
        assertThatThrownBy(() -> new FrameOutputs(guarded, List.of(new RgbKind()), new Plain().info(), NOBODY))
                .hasMessage("frames.json is an input");
        assertThat(namesIn(folder)).isEmpty();
    }

    @Test
    void allAreClosedEvenIfOneCannotBe() throws Exception {
        Doubtful first = new Doubtful(-1, true);
        Doubtful second = new Doubtful(-1, true);
        OutputFolder out = new OutputFolder(folder, IfExists.REFUSE, target -> {});
        FrameOutputs outputs = new FrameOutputs(out, List.of(first, new RgbKind()), new Plain().info(), NOBODY);
        assertThatThrownBy(outputs::close).hasMessage("doubt.txt cannot be closed");
        assertThat(first.closed).containsExactly("doubt.txt");
        assertThat(second.closed).isEmpty();
        assertThat(namesIn(folder)).isEmpty();
    }

    private void run(List<OutputKind> kinds) throws Exception {
        FrameSource source = new Plain();
        FrameRun run = new FrameRun(source, source.info().frames(), 2);
        OutputFolder out = new OutputFolder(folder, IfExists.REPLACE, target -> {});
        try (FrameOutputs outputs = new FrameOutputs(out, kinds, run.info(), NOBODY)) {
            run.into(outputs.sinks(), Progress.SILENT);
            outputs.publish();
        }
    }

    /** A hundred frames of one pixel. */
    private record Plain() implements FrameSource {
        @Override
        public RunInfo info() {
            return RunInfo.ofWhole("", FrameRate.of(40), 100, FramePixels.unnamed(1));
        }

        @Override
        public FrameReader reader() {
            return (frame, rgb, offset) -> rgb[offset] = (byte) frame;
        }
    }

    /** A kind whose sink fails at a frame, at its end, at closing, or never. */
    private static final class Doubtful implements OutputKind {
        final List<String> closed = new ArrayList<>();
        private final long failsAt;
        private final boolean unclosable;

        Doubtful(long failsAt, boolean unclosable) {
            this.failsAt = failsAt;
            this.unclosable = unclosable;
        }

        @Override
        public String word() {
            return "doubt";
        }

        @Override
        public String help() {
            return "may fail";
        }

        @Override
        public List<String> files() {
            return List.of("doubt.txt");
        }

        @Override
        public FrameSink open(OutputFolder out) throws IOException {
            StagedFile file = out.open("doubt.txt");
            return new FrameSink() {
                @Override
                public void take(FrameBatch frames) throws IOException {
                    for (int i = 0; i < frames.count(); i++) {
                        failIf(frames.frame(i) == failsAt);
                    }
                }

                @Override
                public void finish() throws IOException {
                    failIf(failsAt == Long.MAX_VALUE);
                    file.finish();
                }

                @Override
                public void close() throws IOException {
                    file.close();
                    closed.add("doubt.txt");
                    if (unclosable) {
                        throw new IOException("doubt.txt cannot be closed");
                    }
                }
            };
        }

        private static void failIf(boolean now) throws IOException {
            if (now) {
                throw new IOException("doubt.txt is full");
            }
        }
    }
}
