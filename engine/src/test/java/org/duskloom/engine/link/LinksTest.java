package org.duskloom.engine.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.TestAbortedException;

/** A test that cannot make its link is skipped; one that goes wrong otherwise fails. */
class LinksTest {
    @TempDir
    private Path folder;

    /** The file system of the JDK for archives has none. */
    @Test
    void whereThereAreNoneTheTestIsSkipped() throws IOException {
        try (FileSystem archive = FileSystems.newFileSystem(folder.resolve("a.zip"), Map.of("create", "true"))) {
            Path link = archive.getPath("link");
            assertThatThrownBy(() -> Links.symbolic(link, archive.getPath("a")))
                    .isInstanceOf(TestAbortedException.class)
                    .hasMessageContaining("SKIPPED: no link can be made at link: ");
            assertThatThrownBy(() -> Links.hard(link, archive.getPath("a"))).isInstanceOf(TestAbortedException.class);
        }
    }

    @Test
    void aSlipIsNoReason() throws IOException {
        Path file = Files.writeString(folder.resolve("a"), "mine");
        assertThatThrownBy(() -> Links.symbolic(file, file)).isInstanceOf(FileAlreadyExistsException.class);
        Path link = Links.symbolic(folder.resolve("link"), file);
        assertThat(link).isSymbolicLink().hasContent("mine");
        assertThat(Links.hard(folder.resolve("other"), file)).isRegularFile().hasContent("mine");
    }
}
