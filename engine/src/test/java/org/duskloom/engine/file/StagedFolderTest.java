package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder of files that gets its name as a whole. */
class StagedFolderTest {
    private static final Pattern NUMBERS = Pattern.compile("\\d{3,}\\.rgb");

    @TempDir
    private Path folder;

    @Test
    void hasItsNameOnlyWhenPublished() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            StagedFolder singles = group.openFolder(folder.resolve("out/singles"), NUMBERS);
            write(singles, "000.rgb", "first");
            write(singles, "001.rgb", "second");
            assertThat(singles.files()).isEqualTo(2);
            singles.finish();
            assertThat(namesIn(folder.resolve("out"))).containsExactly(".singles.part");
            group.publish();
        }
        assertThat(namesIn(folder.resolve("out"))).containsExactly("singles");
        assertThat(namesIn(folder.resolve("out/singles"))).containsExactly("000.rgb", "001.rgb");
        assertThat(folder.resolve("out/singles/001.rgb")).hasContent("second");
    }

    @Test
    void takesFilesPieceByPieceAndSeveralAtATime() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            StagedFolder ports = group.openFolder(folder.resolve("ports"), Pattern.compile("\\w+\\.bin"));
            StagedFile left = ports.open("left.bin");
            StagedFile right = ports.open("right.bin");
            Folders.write(left, "dai");
            Folders.write(right, "clo");
            Folders.write(left, "sy");
            Folders.write(right, "ver");
            assertThat(left.target()).isEqualTo(folder.resolve("ports/left.bin"));
            left.finish();
            assertThatThrownBy(ports::finish).isInstanceOf(IllegalStateException.class);
            right.finish();
            ports.finish();
            group.publish();
        }
        assertThat(folder.resolve("ports/left.bin")).hasContent("daisy");
        assertThat(folder.resolve("ports/right.bin")).hasContent("clover");
    }

    @Test
    void takesFilesFromManyThreads() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            StagedFolder singles = group.openFolder(folder.resolve("singles"), NUMBERS);
            List<Callable<Void>> frames = new ArrayList<>();
            for (int i = 100; i < 600; i++) {
                String name = i + ".rgb";
                frames.add(() -> {
                    write(singles, name, "frame " + name);
                    return null;
                });
            }
            for (Future<Void> frame : threads.invokeAll(frames)) {
                frame.get();
            }
            singles.finish();
            group.publish();
        } finally {
            threads.shutdown();
        }
        assertThat(namesIn(folder.resolve("singles"))).hasSize(500);
        assertThat(folder.resolve("singles/314.rgb")).hasContent("frame 314.rgb");
    }

    @Test
    void leavesNothingWhenItIsGivenUp() throws IOException {
        StagedFolder kept;
        StagedFile piece;
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            kept = group.openFolder(folder.resolve("a/b/singles"), NUMBERS);
            write(kept, "000.rgb", "first");
            piece = kept.open("001.rgb");
        }
        assertThat(namesIn(folder)).isEmpty();
        assertThatThrownBy(() -> write(kept, "002.rgb", "late")).hasMessageContaining("abandoned");
        assertThatThrownBy(piece::finish).isInstanceOf(IOException.class).hasMessageContaining("abandoned");
        assertThat(namesIn(folder)).isEmpty();
    }

    @Test
    void isPutAwayWhenTheRunIsStopped() throws IOException {
        OutputGroup group = new OutputGroup(IfExists.REFUSE);
        StagedFolder singles = group.openFolder(folder.resolve("singles"), NUMBERS);
        write(singles, "000.rgb", "first");
        singles.finish();
        assertThat(StagedFiles.abandonAll()).isEqualTo(1);
        assertThat(namesIn(folder)).isEmpty();
        assertThatThrownBy(group::publish).isInstanceOf(IOException.class);
    }

    /** Without one of its files the folder is not whole. */
    @Test
    void isGivenUpWithOneOfItsFiles() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            StagedFolder singles = group.openFolder(folder.resolve("singles"), NUMBERS);
            write(singles, "000.rgb", "first");
            singles.open("001.rgb").close();
            assertThatThrownBy(singles::finish).isInstanceOf(IOException.class);
            assertThat(namesIn(folder)).isEmpty();
        }
    }

    @Test
    void refusesANameTwice() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            StagedFolder singles = group.openFolder(folder.resolve("singles"), NUMBERS);
            write(singles, "000.rgb", "first");
            assertThatThrownBy(() -> write(singles, "000.rgb", "again"))
                    .isInstanceOf(OutputRefusedException.class)
                    .hasMessageEndingWith("000.rgb is the name of two outputs; give each a name of its own");
        }
        assertThat(namesIn(folder)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.rgb", "000.png", "../000.rgb", "a/000.rgb", "/000.rgb", ""})
    void refusesNamesThatItsFilesDoNotHave(String name) throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            StagedFolder singles = group.openFolder(folder.resolve("singles"), NUMBERS);
            assertThatThrownBy(() -> singles.open(name)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void replacesTheWholeFolderWhenAsked() throws IOException {
        Path old = Files.createDirectory(folder.resolve("singles"));
        Files.writeString(old.resolve("000.rgb"), "old");
        Files.writeString(old.resolve("001.rgb"), "old");
        assertThatThrownBy(() -> publish(IfExists.REFUSE))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageEndingWith("singles exists already");
        assertThat(old.resolve("000.rgb")).hasContent("old");
        publish(IfExists.REPLACE);
        assertThat(namesIn(old)).containsExactly("000.rgb");
        assertThat(old.resolve("000.rgb")).hasContent("new");
        assertThat(namesIn(folder)).containsExactly("singles");
    }

    @Test
    void usesAnEmptyFolderWithoutBeingAsked() throws IOException {
        Files.createDirectory(folder.resolve("singles"));
        publish(IfExists.REFUSE);
        assertThat(folder.resolve("singles/000.rgb")).hasContent("new");
    }

    /** Whoever has put something of their own there would lose it. */
    @ParameterizedTest
    @ValueSource(strings = {"notes.txt", ".hidden", "12.rgb"})
    void neverReplacesAFolderThatHoldsSomethingElse(String name) throws IOException {
        Path old = Files.createDirectory(folder.resolve("singles"));
        Files.writeString(old.resolve("000.rgb"), "old");
        Files.writeString(old.resolve(name), "mine");
        assertThatThrownBy(() -> publish(IfExists.REPLACE))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageEndingWith("singles is replaced as a whole, and holds " + name
                        + ", which is something else; move that away or write somewhere else");
        assertThat(namesIn(old)).containsExactlyInAnyOrder("000.rgb", name);
        assertThat(namesIn(folder)).containsExactly("singles");
    }

    @Test
    void looksAgainBeforeItReplaces() throws IOException {
        Path old = Files.createDirectory(folder.resolve("singles"));
        try (OutputGroup group = new OutputGroup(IfExists.REPLACE)) {
            StagedFolder singles = group.openFolder(old, NUMBERS);
            write(singles, "000.rgb", "new");
            singles.finish();
            Files.writeString(old.resolve("notes.txt"), "mine");
            assertThatThrownBy(group::publish).isInstanceOf(OutputRefusedException.class);
        }
        assertThat(namesIn(old)).containsExactly("notes.txt");
    }

    @Test
    void refusesAFileInTheWay() throws IOException {
        Files.writeString(folder.resolve("singles"), "a file");
        assertThatThrownBy(() -> publish(IfExists.REPLACE))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageEndingWith("singles is no folder; a folder of that name is to be written");
    }

    private void publish(IfExists ifExists) throws IOException {
        try (OutputGroup group = new OutputGroup(ifExists)) {
            StagedFolder singles = group.openFolder(folder.resolve("singles"), NUMBERS);
            write(singles, "000.rgb", "new");
            singles.finish();
            group.publish();
        }
    }

    private static void write(StagedFolder singles, String name, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        singles.write(name, bytes, 0, bytes.length);
    }
}
