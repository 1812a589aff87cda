package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/**
 * Where an output goes, with links followed.
 *
 * @param asked the name as it was given, for messages
 * @param path the file itself; for a device, the name as given
 * @param straight whether it is a device or a pipe, which is written to and never replaced
 */
record Destination(Path asked, Path path, boolean straight) {
    /** Not a file that could be found by name: told apart by identity. */
    static final Destination STANDARD_OUTPUT =
            new Destination(Path.of("standard output"), Path.of("standard output"), true);

    /**
     * Looks at what stands under the name, and makes the folder where it is missing.
     *
     * @throws OutputRefusedException if a folder stands there, a link that leads nowhere, or a file that may not be
     *     replaced
     * @throws IOException if the folder cannot be made or looked at
     */
    static Destination resolve(Path asked, IfExists ifExists, CreatedFolders folders) throws IOException {
        Optional<BasicFileAttributes> found = attributes(asked);
        if (found.isPresent()) {
            refuseUnlessReplaceable(asked, found.get(), ifExists);
            boolean straight = found.get().isOther();
            return new Destination(asked, straight ? asked : asked.toRealPath(), straight);
        }
        if (Files.isSymbolicLink(asked)) {
            throw new OutputRefusedException(asked + " is a link that leads nowhere");
        }
        Path whole = asked.toAbsolutePath();
        folders.create(whole.getParent());
        return new Destination(asked, whole.getParent().toRealPath().resolve(whole.getFileName()), false);
    }

    /** Looks again, just before the new file takes its place: things may have changed while it was written. */
    void refuseIfTaken(IfExists ifExists) throws IOException {
        Optional<BasicFileAttributes> found = attributes(path);
        if (found.isPresent()) {
            refuseUnlessReplaceable(asked, found.get(), ifExists);
            if (found.get().isOther()) {
                throw new OutputRefusedException(asked + " has become a device or a pipe while it was written");
            }
        }
    }

    private static void refuseUnlessReplaceable(Path asked, BasicFileAttributes found, IfExists ifExists)
            throws OutputRefusedException {
        if (found.isDirectory()) {
            throw new OutputRefusedException(asked + " is a folder; give the name of a file");
        }
        if (found.isRegularFile() && ifExists == IfExists.REFUSE) {
            throw OutputRefusedException.ofExisting(asked);
        }
    }

    private static Optional<BasicFileAttributes> attributes(Path file) throws IOException {
        try {
            return Optional.of(Files.readAttributes(file, BasicFileAttributes.class));
        } catch (NoSuchFileException absent) {
            return Optional.empty();
        } catch (FileSystemException fault) {
            refuseFileAsFolder(file);
            throw fault;
        }
    }

    private static void refuseFileAsFolder(Path file) throws OutputRefusedException {
        for (Path step = file.getParent(); step != null; step = step.getParent()) {
            if (Files.exists(step) && !Files.isDirectory(step)) {
                throw new OutputRefusedException(file + " cannot be made: " + step + " is a file, not a folder");
            }
        }
    }
}
