package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What outputs rely on: that nobody's file is opened by mistake, and that a name changes in one step. */
class SystemCallsTest {
    private final FileCalls calls = new SystemCalls();

    @TempDir
    private Path folder;

    @Test
    void makesOnlyWhatIsNotThere() throws IOException {
        Path file = Files.writeString(folder.resolve("a"), "mine");
        assertThatThrownBy(() -> calls.create(file)).isInstanceOf(FileAlreadyExistsException.class);
        assertThatThrownBy(() -> calls.makeFolder(file)).isInstanceOf(FileAlreadyExistsException.class);
        assertThatThrownBy(() -> calls.makeFolder(folder)).isInstanceOf(FileAlreadyExistsException.class);
        assertThat(file).hasContent("mine");
    }

    /** Pieces are 262,144 bytes: none, one, one and a byte, three less a byte; from the middle of a buffer. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 262_144, 262_145, 786_431})
    void writesAllThatRemains(int count) throws IOException {
        byte[] bytes = new byte[count + 9];
        new SplittableRandom(count).nextBytes(bytes);
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        buffer.position(5).limit(5 + count);
        Path file = folder.resolve("frames.rgb");
        try (FileChannel channel = calls.create(file)) {
            calls.write(channel, buffer);
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(Arrays.copyOfRange(bytes, 5, 5 + count));
        assertThat(buffer.position()).isEqualTo(5 + count);
        assertThat(buffer.limit()).isEqualTo(5 + count);
    }

    @Test
    void aNameGoesOverToAFile() throws IOException {
        Path fresh = Files.writeString(folder.resolve("new"), "new");
        Path old = Files.writeString(folder.resolve("frames.rgb"), "old");
        calls.rename(fresh, old);
        assertThat(Folders.namesIn(folder)).containsExactly("frames.rgb");
        assertThat(old).hasContent("new");
    }

    /** That of two runs only one has a place rests on this (rename of POSIX.1-2017: EEXIST or ENOTEMPTY). */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void noFolderIsRenamedOverOneThatHoldsSomething() throws IOException {
        Path fresh = Files.createDirectory(folder.resolve("new"));
        Path place = Files.createDirectory(folder.resolve("place"));
        calls.rename(fresh, place);
        Files.writeString(place.resolve("claim"), "first");
        Files.createDirectory(fresh);
        Files.writeString(fresh.resolve("claim"), "second");
        assertThatThrownBy(() -> calls.rename(fresh, place)).isInstanceOf(IOException.class);
        assertThat(place.resolve("claim")).hasContent("first");
    }

    @Test
    void removesFilesAndEmptyFoldersAndNothingElse() throws IOException {
        Path held = Files.createDirectory(folder.resolve("held"));
        Path file = Files.writeString(held.resolve("a"), "");
        assertThatThrownBy(() -> calls.delete(held)).isInstanceOf(DirectoryNotEmptyException.class);
        calls.delete(file);
        calls.delete(held);
        calls.delete(held);
        assertThat(calls.list(folder)).isEmpty();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aSecondNameOutlivesTheFirst() throws IOException {
        Path file = Files.writeString(folder.resolve("a"), "bytes");
        Path second = folder.resolve("b");
        calls.link(second, file);
        assertThatThrownBy(() -> calls.link(second, file)).isInstanceOf(FileAlreadyExistsException.class);
        calls.delete(file);
        assertThat(second).hasContent("bytes");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void permissionsAreThoseOfTheOther() throws IOException {
        Path from = Files.writeString(folder.resolve("a"), "");
        Path to = Files.writeString(folder.resolve("b"), "");
        Files.setPosixFilePermissions(from, PosixFilePermissions.fromString("rw-r---wx"));
        calls.copyPermissions(from, to);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(to)))
                .isEqualTo("rw-r---wx");
    }
}
