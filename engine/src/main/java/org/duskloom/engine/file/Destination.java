package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Where an output goes, with links followed.
 *
 * @param asked the name as it was given, for messages
 * @param path the file or folder itself; for a device, the name as given
 * @param straight whether it is a device or a pipe, which is written to and never replaced
 */
record Destination(Path asked, Path path, boolean straight) {
    /**
     * Looks at what stands under the name, and makes the folder around it where that is missing.
     *
     * @throws OutputRefusedException if something stands there that may not be replaced, or a link that leads nowhere
     * @throws IOException if the folder cannot be made or looked at
     */
    static Destination resolve(StagedTarget.Wish wish, CreatedFolders folders) throws IOException {
        Path asked = wish.asked();
        Optional<BasicFileAttributes> found = attributes(asked);
        if (found.isPresent()) {
            refuseUnlessReplaceable(asked, found.get(), wish);
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

    /** Looks again, just before the new one takes its place: things may have changed while it was written. */
    void refuseIfTaken(StagedTarget.Wish wish) throws IOException {
        Optional<BasicFileAttributes> found = attributes(path);
        if (found.isPresent()) {
            refuseUnlessReplaceable(asked, found.get(), wish);
            if (found.get().isOther()) {
                throw new OutputRefusedException(asked + " has become a device or a pipe while it was written");
            }
        }
    }

    private static void refuseUnlessReplaceable(Path asked, BasicFileAttributes found, StagedTarget.Wish wish)
            throws IOException {
        if (wish.members().isPresent()) {
            refuseFolder(asked, found, wish.ifExists(), wish.members().get());
        } else if (found.isDirectory()) {
            throw new OutputRefusedException(asked + " is a folder; give the name of a file");
        } else if (found.isRegularFile() && wish.ifExists() == IfExists.REFUSE) {
            throw OutputRefusedException.ofExisting(asked);
        }
    }

    /** An empty folder may always be used, one that holds anything else than such outputs never. */
    private static void refuseFolder(Path asked, BasicFileAttributes found, IfExists ifExists, Pattern members)
            throws IOException {
        if (!found.isDirectory()) {
            throw new OutputRefusedException(asked + " is no folder; a folder of that name is to be written");
        }
        Optional<Path> other = Optional.empty();
        boolean empty;
        try (Stream<Path> entries = Files.list(asked)) {
            List<Path> all = entries.sorted().toList();
            empty = all.isEmpty();
            other = all.stream().filter(entry -> !isMember(entry, members)).findFirst();
        }
        if (other.isPresent()) {
            throw new OutputRefusedException(asked + " is replaced as a whole, and holds "
                    + other.get().getFileName() + ", which is something else; move that away or write somewhere else");
        }
        if (!empty && ifExists == IfExists.REFUSE) {
            throw OutputRefusedException.ofExisting(asked);
        }
    }

    private static boolean isMember(Path entry, Pattern members) {
        return Files.isRegularFile(entry)
                && members.matcher(entry.getFileName().toString()).matches();
    }

    private static Optional<BasicFileAttributes> attributes(Path file) throws IOException {
        try {
            return Optional.of(Files.readAttributes(file, BasicFileAttributes.class));
        } catch (NoSuchFileException absent) {
            return Optional.empty();
        } catch (FileSystemException fault) {
            refuseFileAsFolder(file);
            refuseCircle(file);
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

    /** The system's own words speak of too many levels. */
    private static void refuseCircle(Path file) throws IOException {
        for (Path step = file; step != null; step = step.getParent()) {
            if (isCircle(step)) {
                throw new OutputRefusedException(
                        step.equals(file)
                                ? file + " is a link that leads to itself"
                                : file + " cannot be made: " + step + " is a link that leads to itself");
            }
        }
    }

    /** Whether one comes back to a link by following it, by way of others too. */
    private static boolean isCircle(Path file) throws IOException {
        Set<Path> passed = new HashSet<>();
        Path step = file.toAbsolutePath().normalize();
        while (Files.isSymbolicLink(step)) {
            if (!passed.add(step)) {
                return true;
            }
            step = step.resolveSibling(Files.readSymbolicLink(step)).normalize();
        }
        return false;
    }
}
