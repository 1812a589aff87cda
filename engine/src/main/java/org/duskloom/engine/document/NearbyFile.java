package org.duskloom.engine.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.text.LookAlike;
import org.duskloom.engine.text.Quoted;

/** Finds the file that was probably meant where there is none of the name written. */
public final class NearbyFile {
    /** Folders with more entries are searched in part only. */
    private static final int MOST_ENTRIES = 10_000;

    /** What editors of texts put behind a name, and some systems do not show. */
    private static final String HIDDEN_ENDING = ".txt";

    private NearbyFile() {}

    /**
     * The name of a file in the same folder that is near to the name of the missing one.
     *
     * @param missing where there is no file
     * @return a name without its folder; nothing if no name is near, or the folder cannot be looked into
     */
    public static Optional<String> of(Path missing) {
        return nearest(missing, entry -> !Files.isDirectory(entry));
    }

    /**
     * What may be done where a file is missing: what is said of a link that leads nowhere, the name that was probably
     * meant, else where it was looked for.
     *
     * @param missing where there is no file
     * @param folder what the user wrote before its name; may be empty
     */
    public static String hint(Path missing, String folder) {
        Optional<String> lost = lostLink(missing);
        if (lost.isPresent()) {
            return lost.get();
        }
        Path hidden = missing.resolveSibling(missing.getFileName() + HIDDEN_ENDING);
        if (Files.isRegularFile(hidden)) {
            return "there is " + Quoted.of(folder + hidden.getFileName()) + ", whose " + HIDDEN_ENDING
                    + " Windows may hide: rename it";
        }
        return of(missing)
                .map(near -> meant(missing.getFileName().toString(), near, Quoted.of(folder + near)))
                .orElseGet(() -> "looked for " + missing.toAbsolutePath().normalize());
    }

    private static String meant(String written, String near, String shown) {
        return LookAlike.are(near, written) ? LookAlike.hint(shown) : "did you mean " + shown + "?";
    }

    /**
     * What is said of a link that leads nowhere: the missing file, or a folder on the way to it.
     *
     * @param missing where there is nothing
     * @return nothing if there is no such link
     */
    public static Optional<String> lostLink(Path missing) {
        if (isLost(missing)) {
            return Optional.of("it is a link that leads nowhere");
        }
        for (Path folder = missing.getParent(); folder != null; folder = folder.getParent()) {
            if (isLost(folder)) {
                return Optional.of(Quoted.of(folder.toString()) + " is a link that leads nowhere");
            }
        }
        return Optional.empty();
    }

    private static boolean isLost(Path path) {
        return Files.isSymbolicLink(path) && Files.notExists(path);
    }

    /**
     * The name of a file or folder beside a missing one that is near to its name.
     *
     * @param missing where there is neither a file nor a folder
     * @return a name without its folder; nothing if no name is near, or the folder cannot be looked into
     */
    public static Optional<String> orFolder(Path missing) {
        return nearest(missing, entry -> true);
    }

    private static Optional<String> nearest(Path missing, Predicate<Path> isMeant) {
        Path name = missing.getFileName();
        Path parent = missing.toAbsolutePath().getParent();
        if (name == null || parent == null) {
            return Optional.empty();
        }
        // A name with many accents would be far from itself.
        Map<String, String> byComposed = new LinkedHashMap<>();
        namesIn(parent, isMeant).forEach(found -> byComposed.putIfAbsent(LookAlike.composed(found), found));
        return NearestName.of(LookAlike.composed(name.toString()), byComposed.keySet())
                .map(byComposed::get);
    }

    private static List<String> namesIn(Path folder, Predicate<Path> isMeant) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.limit(MOST_ENTRIES)
                    .filter(isMeant)
                    .map(entry -> entry.getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException | RuntimeException unreadable) {
            // Only a suggestion is lost.
            return List.of();
        }
    }
}
