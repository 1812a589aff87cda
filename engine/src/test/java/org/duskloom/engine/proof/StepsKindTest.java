package org.duskloom.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.RunStep;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on a proof as a file among its other outputs. */
class StepsKindTest {
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\nrake,1,0,0\nrake,2,0,1\nhoe,1,5,0\n");

    @TempDir
    private Path folder;

    private static ProofFrames frames(Proof proof) {
        return new ProofFrames(proof, "Tools", FramePixels.of(MAP));
    }

    /** What is written by a run on so many threads. */
    private String written(StepsKind kind, ProofFrames frames, int threads) throws Exception {
        Path path = folder.resolve(threads + kind.file());
        try (FrameSink sink = kind.into(StagedFile.open(path, IfExists.REFUSE))) {
            new FrameRun(frames, frames.info().frames(), threads).into(sink, Progress.SILENT);
        }
        return Files.readString(path);
    }

    /** A line for each step, and the same on any number of threads. */
    @Test
    void writesAllSteps() throws Exception {
        ProofFrames frames = frames(Proof.of(GroupTree.of(MAP)));
        String page = written(new StepsKind(), frames, 1);
        assertThat(page)
                .startsWith("What the proof shows, at 20 frames a second.\n")
                .endsWith("\n");
        assertThat(page.lines()
                        .filter(line -> line.contains(" %  "))
                        .map(line -> line.substring(10, 40).strip())
                        .toList())
                .isEqualTo(frames.info().steps().stream().map(RunStep::caption).toList());
        // IEC 61966-2-1 gives the code 89 for a tenth of the light: 34.9 in a hundred of 255, of all three pixels.
        assertThat(page).containsPattern("colour white +3 +35 %  every pixel is white");
        assertThat(written(new StepsKind(), frames, 4)).isEqualTo(page);
    }

    @Test
    void aRunForACameraBeginsWithWhatToDo() throws Exception {
        FindRun run = new FindRun(3, 1);
        assertThat(written(new StepsKind(run), frames(Proof.ofFinding(run, 10, 0.3)), 2))
                .startsWith("How the lights tell a camera where they hang.\n")
                .contains("What is seen, at 20 frames a second.\n");
    }

    /** A run that ends early leaves no page that looks finished. */
    @Test
    void whatIsNotFinishedIsNotThere() throws IOException {
        ProofFrames frames = frames(Proof.of(GroupTree.of(MAP)));
        try (FrameSink sink = new StepsKind().into(StagedFile.open(folder.resolve("steps.txt"), IfExists.REFUSE))) {
            sink.begin(frames.info());
            sink.frame(0, new byte[9]);
        }
        try (var left = Files.list(folder)) {
            assertThat(left.toList()).isEmpty();
        }
    }

    /** Who asks for frames alone is not told that a page of text holds them. */
    @Test
    void isNoFileOfFrames() {
        StepsKind kind = new StepsKind();
        assertThat(kind.holdsFrames()).isFalse();
        assertThat(List.of(kind.word(), kind.file())).containsExactly("steps", "steps.txt");
        assertThat(kind.help()).isEqualTo("what to see in each step of a proof, and when");
    }
}
