package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.plan.KernelShelf;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.ShowFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The garden, edited again and again: with kernels of the edits before its frames are those of a plan made anew. */
class KernelShelfTest {
    private record Edit(String file, String from, String to) {}

    private static final List<Edit> EDITS = List.of(
            new Edit("show.json", "\"seed\": ", "\"seed\": 9"),
            new Edit("show.json", "\"opacity\": 0.", "\"opacity\": 0.1"),
            new Edit("show.json", "\"order\": \"members\"", "\"order\": \"right\""),
            new Edit("show.json", "#ff", "#7f"),
            new Edit("display.json", "\"turn\": 90", "\"turn\": 91"),
            new Edit(
                    "display.json",
                    "\"props\": [",
                    "\"props\": [\n {\"name\": \"aaa\", \"shape\": \"trellis\", \"at\": [0, 0]},"));

    @TempDir
    private Path folder;

    @Test
    void framesAreThoseOfAPlanMadeAnew() throws IOException {
        Project.copy("demos/garden", folder);
        Path garden = folder.resolve("demos/garden");
        KernelShelf shelf = new KernelShelf();
        for (Edit edit : EDITS) {
            Path file = garden.resolve(edit.file);
            String text = Files.readString(file);
            assertThat(text).contains(edit.from);
            for (String saved : List.of(text.replace(edit.from, edit.to), text)) {
                Files.writeString(file, saved);
                assertSameFrames(garden.resolve("show.json"), shelf, edit);
            }
        }
    }

    private static void assertSameFrames(Path show, KernelShelf shelf, Edit edit) throws IOException {
        Problems problems = new Problems();
        Optional<LoadedShow> kept = LoadedShow.load(show, ShowFiles.beside(show), shelf, problems);
        Optional<LoadedShow> anew = LoadedShow.load(show, ShowFiles.beside(show), KernelShelf.unused(), new Problems());
        assertThat(kept).as("%s: %s", edit, problems.inFileOrder()).isPresent();
        assertThat(kept.get().plan().fingerprints(32))
                .isEqualTo(anew.get().plan().fingerprints(32));
        for (long frame = 3; frame < 3840; frame += 127) {
            assertThat(frame(kept.get(), frame)).as("%s, frame %d", edit, frame).isEqualTo(frame(anew.get(), frame));
        }
    }

    private static byte[] frame(LoadedShow show, long frame) throws IOException {
        byte[] rgb = new byte[show.frames().info().frameBytes()];
        try (FrameReader reader = show.frames().reader()) {
            reader.read(frame, rgb, 0);
        }
        return rgb;
    }
}
