package org.duskloom.engine.format;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.file.StagedFolder;

/**
 * The folder that a run writes into. All its files become final together, when the run is complete; closing before that
 * leaves what stood there.
 */
public final class OutputFolder implements Closeable {
    private final Path folder;
    private final OutputGroup group;
    private final Guard guard;

    /** Says which names are not to be written, because they are read. */
    @FunctionalInterface
    public interface Guard {
        /**
         * Looks at the name of an output.
         *
         * @throws IOException if the file cannot be looked at; or another fault, if it must not be written
         */
        void check(Path target) throws IOException;
    }

    /**
     * A folder without files of this run.
     *
     * @param folder where it is; made with the first file, if it is missing
     * @param ifExists what to do about files that stand under the names of the run's
     * @param guard refuses names
     */
    public OutputFolder(Path folder, IfExists ifExists, Guard guard) {
        this.folder = folder;
        this.group = new OutputGroup(ifExists);
        this.guard = guard;
    }

    /**
     * Begins a file.
     *
     * @param name as seen from the folder, with slashes
     * @throws IOException if that cannot be done, or the name is refused
     */
    public StagedFile open(String name) throws IOException {
        Path target = path(name);
        guard.check(target);
        return group.open(target);
    }

    /**
     * Begins the file that speaks of the others: see {@link OutputGroup#openManifest}.
     *
     * @throws IOException if that cannot be done, or the name is refused
     */
    public StagedFile openManifest(String name) throws IOException {
        Path target = path(name);
        guard.check(target);
        return group.openManifest(target);
    }

    /**
     * Begins a folder of many files, one for each frame, say: see {@link OutputGroup#openFolder}.
     *
     * @param name as seen from the folder, with slashes
     * @param members what the names of its files look like
     * @throws IOException if that cannot be done, or the name is refused
     */
    public StagedFolder openFolder(String name, Pattern members) throws IOException {
        Path target = path(name);
        guard.check(target);
        return group.openFolder(target, members);
    }

    /** Where a file of that name is, in the making or final. */
    public Path path(String name) {
        return folder.resolve(name);
    }

    /**
     * All files are finished: gives them their names, the manifest last.
     *
     * @throws IOException if that fails; then none has its name
     */
    public void publish() throws IOException {
        group.publish();
    }

    /** Abandons what is not final. */
    @Override
    public void close() {
        group.close();
    }
}
