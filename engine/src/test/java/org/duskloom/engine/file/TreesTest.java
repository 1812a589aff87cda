package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class TreesTest {
    private final FileCalls calls = new SystemCalls();

    @TempDir
    private Path folder;

    @Test
    void whatIsNotThereIsGone() {
        assertThat(Trees.delete(folder.resolve("nothing"), calls)).isTrue();
    }

    @Test
    void removesFilesAndFoldersToAnyDepth() throws IOException {
        Path deep = Files.createDirectories(folder.resolve("kept/a/b"));
        Files.writeString(deep.resolve("00.rgb"), "frame");
        Files.writeString(folder.resolve("kept/a/01.rgb"), "frame");
        Files.createDirectory(folder.resolve("kept/empty"));
        assertThat(Trees.delete(folder.resolve("kept"), calls)).isTrue();
        assertThat(folder).isEmptyDirectory();
    }

    /** A link is removed, what it leads to is somebody else's; a link that leads nowhere is removed as well. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void linksAreNotFollowed() throws IOException {
        Path songs = Files.createDirectory(folder.resolve("songs"));
        Files.writeString(songs.resolve("song.wav"), "mine");
        Path kept = Files.createDirectory(folder.resolve("kept"));
        Links.symbolic(kept.resolve("link"), songs);
        Links.symbolic(kept.resolve("lost"), folder.resolve("nowhere"));
        assertThat(Trees.delete(kept, calls)).isTrue();
        assertThat(Folders.namesIn(folder)).containsExactly("songs");
        assertThat(songs.resolve("song.wav")).hasContent("mine");
    }

    /** The folder is tried first; then one of two files stays, and its folder with it. */
    @Test
    void oneFileThatStaysHoldsUpNoOther() throws IOException {
        Path kept = Files.createDirectory(folder.resolve("kept"));
        Files.writeString(kept.resolve("a"), "");
        Files.writeString(kept.resolve("b"), "");
        FaultyCalls faulty = new FaultyCalls(FaultyCalls.Fault.ONCE, 2, Set.of("delete"));
        assertThat(Trees.delete(kept, faulty)).isFalse();
        assertThat(Folders.namesIn(kept)).hasSize(1);
        assertThat(Trees.delete(kept, calls)).isTrue();
    }

    @Test
    void aFolderThatCannotBeListedIsLeft() throws IOException {
        Path kept = Files.createDirectory(folder.resolve("kept"));
        Files.writeString(kept.resolve("a"), "");
        FaultyCalls faulty = new FaultyCalls(FaultyCalls.Fault.EVER_AFTER, 1, Set.of("list"));
        assertThat(Trees.delete(kept, faulty)).isFalse();
        assertThat(kept.resolve("a")).exists();
    }
}
