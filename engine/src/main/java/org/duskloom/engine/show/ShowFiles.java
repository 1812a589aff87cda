package org.duskloom.engine.show;

import java.io.File;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.NearbyFile;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * The files of one show. Paths are relative to the file that names them; what was read is remembered. Not safe for use
 * by several threads.
 */
public final class ShowFiles {
    private final Set<InputFile> inputs;
    private final Map<Path, FileStamp> lookedFor;
    private final Path home;
    private final String homeShown;

    private ShowFiles(Set<InputFile> inputs, Map<Path, FileStamp> lookedFor, Path home, String homeShown) {
        this.inputs = inputs;
        this.lookedFor = lookedFor;
        this.home = home;
        this.homeShown = homeShown;
    }

    /** The files round a first one, which the user named. */
    public static ShowFiles beside(Path first) {
        return beside(new LinkedHashSet<>(), new LinkedHashMap<>(), first, first.toString());
    }

    /**
     * The same show's files as they are named in another of its files, from whose folder paths begin there.
     *
     * @param path where that file is
     * @param shownName its name as the user would type it
     */
    public ShowFiles namedIn(Path path, String shownName) {
        return beside(inputs, lookedFor, path, shownName);
    }

    private static ShowFiles beside(
            Set<InputFile> inputs, Map<Path, FileStamp> lookedFor, Path file, String shownName) {
        Path parent = file.getParent();
        String shownParent = shownName.substring(
                0, Math.max(shownName.lastIndexOf('/'), shownName.lastIndexOf(File.separatorChar)) + 1);
        return new ShowFiles(inputs, lookedFor, parent == null ? Path.of("") : parent, shownParent);
    }

    /** The files read so far, in the order of reading, each once. */
    public List<InputFile> inputs() {
        return List.copyOf(inputs);
    }

    /**
     * All files that were looked for so far, those that are missing or could not be read too, each as it was just
     * before it was looked into for the first time: as soon as one of them is another, the show may be another.
     */
    public Map<Path, FileStamp> lookedFor() {
        return Map.copyOf(lookedFor);
    }

    /**
     * The digest of a file that was read or remembered.
     *
     * @return the SHA-256 of its bytes
     */
    public String sha256Hex(Path path) {
        return inputs.stream()
                .filter(input -> input.path().equals(path))
                .findFirst()
                .map(InputFile::sha256Hex)
                .orElseThrow(() -> new IllegalArgumentException(path + " was not read"));
    }

    /** Where a file is that another one names; an error if that is no path, or leads to no plain file. */
    public Optional<Path> locate(TextNode written, Problems problems) {
        try {
            if (!written.value().isEmpty()) {
                Path path = home.resolve(written.value());
                look(path);
                return isThere(path, written, problems) ? Optional.of(path) : Optional.empty();
            }
        } catch (InvalidPathException e) {
            // Said below.
        }
        problems.error(written.location(), Quoted.of(written.value()) + " is not the name of a file");
        return Optional.empty();
    }

    private void look(Path path) {
        lookedFor.computeIfAbsent(path, FileStamp::of);
    }

    private static boolean isThere(Path path, TextNode written, Problems problems) {
        if (Files.isDirectory(path)) {
            problems.error(
                    written.location(),
                    Quoted.of(written.value()) + " is a folder, not a file",
                    "name the file inside it");
            return false;
        }
        if (Files.notExists(path)) {
            problems.error(
                    written.location(), "there is no file " + Quoted.of(written.value()), hint(path, written.value()));
            return false;
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            problems.error(
                    written.location(),
                    Quoted.of(written.value()) + " is a pipe or a device, not a file",
                    "save what it gives and name that file");
            return false;
        }
        return true;
    }

    private static String hint(Path missing, String written) {
        int folderEnd = Math.max(written.lastIndexOf('/'), written.lastIndexOf(File.separatorChar)) + 1;
        return NearbyFile.hint(missing, written.substring(0, folderEnd));
    }

    /** Reads a text file that another one names. */
    public Optional<SourceText> text(TextNode written, Problems problems) {
        return locate(written, problems).flatMap(path -> text(path, shown(written.value()), problems));
    }

    /** Reads a text file. */
    public Optional<SourceText> text(Path path, String shownName, Problems problems) {
        look(path);
        Optional<SourceText> source = SourceText.read(path, shownName, problems);
        source.ifPresent(text -> inputs.add(new InputFile(path, shownName, text.sha256Hex())));
        return source;
    }

    /** Where a file is that another one names and that was read or remembered; nothing if it was not. */
    public Optional<Path> remembered(TextNode written) {
        try {
            Path path = home.resolve(written.value());
            return Optional.of(path)
                    .filter(file ->
                            inputs.stream().anyMatch(known -> known.path().equals(file)));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Remembers a file that an effect reads by itself, with its checksum; false if an error was added. */
    public boolean remember(TextNode written, Path path, Problems problems) {
        if (inputs.stream().anyMatch(known -> known.path().equals(path))) {
            return true;
        }
        String failure = "there is no right to read it";
        try {
            inputs.add(InputFile.of(path, shown(written.value())));
            return true;
        } catch (AccessDeniedException denied) {
            // Said below.
        } catch (IOException failed) {
            failure = failed.getMessage();
        }
        problems.error(
                written.location(), "the file " + Quoted.of(written.value()) + " cannot be read: " + failure, "");
        return false;
    }

    /** Reads a timeline or a display. */
    public Optional<Node> json(Path path, String shownName, Problems problems) {
        return text(path, shownName, problems)
                .filter(source -> !GivenTable.isOne(source, problems))
                .flatMap(source -> JsonReader.read(source, problems));
    }

    /** The name of a file that another one names, as the user would type it. */
    public String shown(String written) {
        return Path.of(written).isAbsolute() ? written : homeShown + written;
    }
}
