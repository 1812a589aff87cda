package org.duskloom.engine.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Files that belong together and become final together: each is brought to the disk when it is finished, and only when
 * {@link #publish} finds all of them complete do they get their names, in the order in which they were finished. Finish
 * last what speaks of the others: whoever finds it finds them too.
 *
 * <p>Closing a group that was not published abandons all of it.
 */
public final class OutputGroup implements Closeable {
    private final IfExists ifExists;
    private final List<StagedFile> all = new ArrayList<>();
    private final List<StagedFile> finished = new ArrayList<>();

    /** @param ifExists what to do about files that stand under the names of the group's */
    public OutputGroup(IfExists ifExists) {
        this.ifExists = ifExists;
    }

    /**
     * Begins a file of this group.
     *
     * @throws OutputRefusedException if something stands there that may not be replaced
     * @throws IOException if the file cannot be begun
     */
    public StagedFile open(Path target) throws IOException {
        StagedFile file = StagedFile.open(target, ifExists, Optional.of(this));
        all.add(file);
        return file;
    }

    /**
     * Gives all files their names.
     *
     * @throws IllegalStateException if one of them is not finished
     * @throws IOException if one was abandoned or cannot have its name; then none has, and what stood there before still does
     */
    public synchronized void publish() throws IOException {
        for (StagedFile file : all) {
            if (file.isOpen()) {
                throw new IllegalStateException(file.target() + " is not finished");
            }
            if (file.isAbandoned()) {
                throw file.abandonedEarly();
            }
        }
        StagedFiles.publish(finished);
        finished.clear();
    }

    /** Abandons the files that are not final. */
    @Override
    public void close() {
        all.forEach(StagedFile::abandon);
    }

    /** From any thread: files of one group may be written beside each other. */
    synchronized void finished(StagedFile file) {
        finished.add(file);
    }
}
