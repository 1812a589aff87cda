package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.concurrent.ThreadLocalRandom;

/** The names of the files that hold an output until it is complete: {@code .NAME.part-*} in the folder of the output. */
final class PartFiles {
    /** A part as old as this belongs to a run that was killed: a living one writes to it. */
    private static final Duration STRAY_AGE = Duration.ofDays(1);

    /** File systems take 255 bytes; the longest character has four, and the rest of the name needs some. */
    private static final int NAME_CHARACTERS = 50;

    private PartFiles() {}

    /** A name that no other run has. */
    static Path fresh(Path target) {
        String random =
                String.format(Locale.ROOT, "%016x", ThreadLocalRandom.current().nextLong());
        return target.resolveSibling(prefix(target) + random);
    }

    /** Removes what runs that were killed more than a day ago have left of this output. */
    static void removeStrays(Path target) {
        String prefix = prefix(target);
        Instant limit = Instant.now().minus(STRAY_AGE);
        try (DirectoryStream<Path> strays = Files.newDirectoryStream(
                target.getParent(), path -> path.getFileName().toString().startsWith(prefix))) {
            for (Path stray : strays) {
                if (Files.getLastModifiedTime(stray).toInstant().isBefore(limit)) {
                    Files.delete(stray);
                }
            }
        } catch (IOException cannotTidy) {
            // Tidying after somebody else is a courtesy; the output does not depend on it.
            return;
        }
    }

    static void delete(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException leftBehind) {
            // The fault that made us give up is told already; a later run removes the part.
            return;
        }
    }

    /** Brings the new names in a folder to the disk. Not every file system can, and then nothing better is to be had. */
    static void syncFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException unsupported) {
            return;
        }
    }

    private static String prefix(Path target) {
        String name = target.getFileName().toString();
        int end = name.offsetByCodePoints(0, Math.min(NAME_CHARACTERS, name.codePointCount(0, name.length())));
        return "." + name.substring(0, end) + ".part-";
    }
}
