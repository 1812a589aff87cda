package org.duskloom.engine.shard;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.format.OutputRegistry;
import org.duskloom.engine.format.Seam;
import org.duskloom.engine.format.WrittenFile;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * A folder with some frames of a show.
 *
 * @param folder where its files stand
 * @param manifest what is known of them
 */
public record Shard(Path folder, FrameManifest manifest) {
    private static final String RENDER_AGAIN = "render this shard again";

    /**
     * Reads the manifest, and looks whether its files are as long as it says.
     *
     * @param folder where they stand
     * @param problems where errors go
     * @return nothing if an error was added
     */
    public static Optional<Shard> in(Path folder, Problems problems) {
        return FrameManifest.in(folder, problems)
                .map(manifest -> new Shard(folder, manifest))
                .filter(shard -> shard.hasItsFiles(problems));
    }

    /** Its frames. */
    FrameList frames() {
        return manifest.run().frames();
    }

    /** The manifest, for messages. */
    Location location() {
        return Location.ofFile(folder.resolve(FrameManifest.FILE).toString());
    }

    /** Where one of its files is. */
    Path path(String file) {
        return folder.resolve(file);
    }

    /** How long one of its files is, as the manifest says. */
    long bytes(String file) {
        return manifest.files().stream()
                .filter(written -> written.file().equals(file))
                .mapToLong(WrittenFile::bytes)
                .sum();
    }

    /**
     * What its files were asked for with, beside the words of {@code --as}; a file that cannot be read tells nothing.
     */
    List<String> options(OutputRegistry kinds) {
        Set<String> options = new TreeSet<>();
        for (WrittenFile written : manifest.files()) {
            if (kinds.seam(written.file()).orElse(null) instanceof Seam.Same same) {
                options.add(options(path(written.file()), same));
            }
        }
        options.remove("");
        return List.copyOf(options);
    }

    private static String options(Path file, Seam.Same same) {
        try {
            return same.options().apply(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            // Whoever takes the file over says so.
            return "";
        }
    }

    /** Everything that must not be written while it is read. */
    public List<Path> inputs() {
        List<Path> inputs = new ArrayList<>();
        inputs.add(folder.resolve(FrameManifest.FILE));
        manifest.files().forEach(written -> inputs.add(path(written.file())));
        return inputs;
    }

    private boolean hasItsFiles(Problems problems) {
        boolean whole = true;
        Set<String> names = new HashSet<>();
        for (WrittenFile written : manifest.files()) {
            if (!names.add(written.file())) {
                problems.error(location(), Quoted.of(written.file()) + " is listed twice", RENDER_AGAIN);
                whole = false;
            } else {
                whole &= hasItsSize(written, problems);
            }
        }
        return whole;
    }

    private boolean hasItsSize(WrittenFile written, Problems problems) {
        Path file = path(written.file());
        try {
            if (!Files.exists(file)) {
                problems.error(
                        Location.ofFile(file.toString()),
                        "there is no such file, and " + FrameManifest.FILE + " beside it speaks of it",
                        RENDER_AGAIN);
                return false;
            }
            boolean folderOfFrames = written.file().endsWith("/");
            if (folderOfFrames != Files.isDirectory(file)) {
                problems.error(
                        Location.ofFile(file.toString()),
                        "it is a " + (folderOfFrames ? "file" : "folder") + ", and " + FrameManifest.FILE
                                + " beside it speaks of a " + (folderOfFrames ? "folder" : "file"),
                        RENDER_AGAIN);
                return false;
            }
            long found = folderOfFrames ? bytesIn(file) : Files.size(file);
            if (found != written.bytes()) {
                problems.error(
                        Location.ofFile(file.toString()),
                        "it has " + found + " bytes, and " + FrameManifest.FILE + " beside it says " + written.bytes(),
                        "it was changed or cut short; " + RENDER_AGAIN);
            }
            return found == written.bytes();
        } catch (IOException fault) {
            problems.error(Location.ofFile(file.toString()), "cannot be read: " + fault.getMessage());
            return false;
        }
    }

    private static long bytesIn(Path folder) throws IOException {
        long bytes = 0;
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                bytes += Files.size(file);
            }
        }
        return bytes;
    }
}
