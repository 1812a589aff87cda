package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The folders made for outputs that are not final yet, so that a run that fails can take them away again. */
final class CreatedFolders {
    private final Set<Path> removable = new LinkedHashSet<>();
    private final FileCalls calls;

    CreatedFolders(FileCalls calls) {
        this.calls = calls;
    }

    /** Makes a folder and what is missing above it. */
    void create(Path folder) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        // A file that stands where a folder is to be is tried too, which then fails.
        for (Path step = folder; step != null && !Files.isDirectory(step); step = step.getParent()) {
            missing.push(step);
        }
        for (Path step : missing) {
            createOne(step);
        }
    }

    /** A file in this folder is final: the folder and those above it stay. */
    void keep(Path folder) {
        for (Path step = folder; step != null; step = step.getParent()) {
            removable.remove(step);
        }
    }

    /** Takes away those that are empty, the deepest first. */
    void removeEmpty() {
        List<Path> deepestFirst = new ArrayList<>(removable);
        deepestFirst.sort(Comparator.comparingInt(Path::getNameCount).reversed());
        for (Path folder : deepestFirst) {
            try {
                calls.delete(folder);
                removable.remove(folder);
            } catch (IOException stillUsed) {
                // Another output stands in it, or somebody else's file: both are reasons to leave it.
                continue;
            }
        }
    }

    private void createOne(Path folder) throws IOException {
        try {
            calls.makeFolder(folder);
            removable.add(folder.toRealPath());
        } catch (FileAlreadyExistsException madeMeanwhile) {
            if (!Files.isDirectory(folder)) {
                throw OutputFault.of("cannot make the folder", folder, madeMeanwhile);
            }
        } catch (IOException fault) {
            throw OutputFault.of("cannot make the folder", folder, fault);
        }
    }
}
