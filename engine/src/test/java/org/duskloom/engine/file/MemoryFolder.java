package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/** Folders in memory where the system has them: for tests that make thousands of files and care little for the disk. */
final class MemoryFolder implements TempDirFactory {
    private static final Path MEMORY = Path.of("/dev/shm");

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext test) throws IOException {
        return Files.isWritable(MEMORY)
                ? Files.createTempDirectory(MEMORY, "junit")
                : Files.createTempDirectory("junit");
    }
}
