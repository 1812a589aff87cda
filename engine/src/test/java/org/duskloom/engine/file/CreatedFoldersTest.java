package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class CreatedFoldersTest {
    private final CreatedFolders folders = new CreatedFolders(new SystemCalls());

    @TempDir
    private Path given;

    private Path folder;

    /** Temporary folders may be reached through links. */
    @BeforeEach
    void resolve() throws IOException {
        folder = given.toRealPath();
    }

    @Test
    void takesAwayWhatItMadeAndNoMore() throws IOException {
        Files.createDirectory(folder.resolve("out"));
        folders.create(folder.resolve("out/july/night/1"));
        assertThat(folder.resolve("out/july/night/1")).isDirectory();
        folders.removeEmpty();
        assertThat(folder.resolve("out")).isEmptyDirectory();
    }

    /** What somebody puts into one keeps it, and those above it; others of the same run go. */
    @Test
    void whatIsInUseStays() throws IOException {
        folders.create(folder.resolve("out/a"));
        folders.create(folder.resolve("out/b/c"));
        Path note = Files.writeString(folder.resolve("out/a/note.txt"), "mine");
        folders.removeEmpty();
        assertThat(Folders.namesIn(folder.resolve("out"))).containsExactly("a");
        Files.delete(note);
        folders.removeEmpty();
        assertThat(folder).isEmptyDirectory();
    }

    /** Final files keep their folder, even when they are moved away later. */
    @Test
    void whatIsFinalKeepsItsFolders() throws IOException {
        folders.create(folder.resolve("out/a/b"));
        folders.keep(folder.resolve("out/a"));
        folders.removeEmpty();
        assertThat(folder.resolve("out/a")).isEmptyDirectory();
        folders.keep(null);
    }

    @Test
    void whatWasThereAlreadyIsNotTakenAway() throws IOException {
        folders.create(folder);
        folders.removeEmpty();
        assertThat(folder).isDirectory();
    }

    /** A link that leads nowhere has the name already, and is no folder; what is looked for in vain is no file. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whatStandsInTheWayIsTold() throws IOException {
        Path lost = Links.symbolic(folder.resolve("out"), folder.resolve("nowhere"));
        assertThatThrownBy(() -> folders.create(lost.resolve("a")))
                .isInstanceOf(IOException.class)
                .hasMessage("cannot make the folder " + lost + ": it is a link that leads nowhere");
        folders.removeEmpty();
        assertThat(lost).isSymbolicLink();
    }

    /** Nothing can be made below a file, and nothing is said to be there. */
    @Test
    void aFileIsNoFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "mine");
        for (Path wanted : List.of(file, file.resolve("a"), file.resolve("a/b"))) {
            assertThatThrownBy(() -> folders.create(wanted))
                    .isInstanceOf(IOException.class)
                    .hasMessage("cannot make the folder " + file + ": a file of that name stands in the way");
        }
        folders.removeEmpty();
        assertThat(file).hasContent("mine");
    }

    /** The disk is full at the second of three: the first is taken away again. */
    @Test
    void aFaultHalfWayLeavesNothing() {
        CreatedFolders faulty = new CreatedFolders(new FaultyCalls(FaultyCalls.Fault.ONCE, 2, Set.of("makeFolder")));
        assertThatThrownBy(() -> faulty.create(folder.resolve("a/b/c")))
                .hasMessage("cannot make the folder " + folder.resolve("a/b") + ": Input/output error");
        faulty.removeEmpty();
        assertThat(folder).isEmptyDirectory();
    }
}
