package org.duskloom.engine.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Outputs that belong together and become final together: only when {@link #publish} finds all of them complete are
 * they brought to the disk and get their names, in the order in which they were finished. A {@linkplain #openManifest
 * manifest} speaks of the others: while they change, none stands there, so whoever finds one can believe it.
 *
 * <p>Nobody else writes any of these outputs at the same time: a second run that wants one of them is refused. What a
 * run left that was killed is put in order when the next one begins an output in that folder.
 *
 * <p>Closing a group that was not published abandons all of it. Outputs are begun by one thread and written by any.
 */
public final class OutputGroup implements Closeable {
    private final IfExists ifExists;
    private final Staging staging;
    private final Owner owner;
    private final boolean ofOne;
    private final List<StagedTarget> all = new ArrayList<>();
    private final List<StagedTarget> finished = new ArrayList<>();
    private final Set<Path> tidied = new HashSet<>();

    /** @param ifExists what to do about what stands under the names of the group's outputs */
    public OutputGroup(IfExists ifExists) {
        this(ifExists, Staging.OF_PROCESS, false);
    }

    OutputGroup(IfExists ifExists, Staging staging, boolean ofOne) {
        this.ifExists = ifExists;
        this.staging = staging;
        this.owner = staging.nextOwner();
        this.ofOne = ofOne;
    }

    /** One that is published as soon as its only file is finished. */
    static OutputGroup ofOne(IfExists ifExists) {
        return new OutputGroup(ifExists, Staging.OF_PROCESS, true);
    }

    /**
     * Begins a file of this group.
     *
     * @throws OutputRefusedException if something stands there that may not be replaced, or another run is writing it
     * @throws IOException if the file cannot be begun
     */
    public StagedFile open(Path target) throws IOException {
        return openFile(target, false);
    }

    /**
     * Begins a file that speaks of the others of this group. What stands under its name is taken away before the first
     * of them changes, and it gets its name after the last of them. A group has at most one.
     *
     * @throws IllegalStateException if the group has one already
     * @throws OutputRefusedException if something stands there that may not be replaced, or another run is writing it
     * @throws IOException if the file cannot be begun
     */
    public StagedFile openManifest(Path target) throws IOException {
        if (all.stream().anyMatch(other -> other.wish().manifest())) {
            throw new IllegalStateException("a group of outputs has one manifest");
        }
        return openFile(target, true);
    }

    /**
     * Begins a folder of files that gets its name as a whole.
     *
     * @param members what the names of the files look like. A folder that holds anything else is never replaced: it
     *     would be lost.
     * @throws OutputRefusedException if something stands there that may not be replaced, or another run is writing it
     * @throws IOException if the folder cannot be begun
     */
    public StagedFolder openFolder(Path target, Pattern members) throws IOException {
        StagedTarget begun = begin(new StagedTarget.Wish(target, ifExists, Optional.of(members), false));
        return begun(begun, () -> {
            staging.calls().makeFolder(begun.workplace().fresh());
            return new StagedFolder(begun, members, staging.calls());
        });
    }

    /**
     * Brings all outputs to the disk and gives them their names.
     *
     * @throws IllegalStateException if one of them is not finished
     * @throws IOException if one was abandoned or cannot have its name; then none has, and what stood there before
     *     still does. Where even that cannot be had, the message says so and names what is kept.
     */
    public synchronized void publish() throws IOException {
        for (StagedTarget target : all) {
            if (target.isOpen()) {
                throw new IllegalStateException(target.asked() + " is not finished");
            }
            if (target.isAbandoned()) {
                throw target.abandonedEarly();
            }
        }
        staging.publish(finished);
        finished.clear();
    }

    /** Abandons what is not final. */
    @Override
    public void close() {
        all.forEach(StagedTarget::abandon);
    }

    Staging staging() {
        return staging;
    }

    Owner owner() {
        return owner;
    }

    /** From any thread: outputs of one group may be written beside each other. */
    synchronized void finished(StagedTarget target) throws IOException {
        finished.add(target);
        if (ofOne) {
            publish();
        }
    }

    /** Puts in order what killed runs have left in a folder, when the first output there is begun. */
    void tidy(Path folder) throws IOException {
        if (folder != null && Files.isDirectory(folder)) {
            Path real = folder.toRealPath();
            if (tidied.add(real)) {
                staging.leftovers(owner).clear(real);
            }
        }
    }

    private StagedFile openFile(Path target, boolean manifest) throws IOException {
        StagedTarget begun = begin(new StagedTarget.Wish(target, ifExists, Optional.empty(), manifest));
        return begun(begun, () -> {
            // Opening a pipe waits for its reader: outside of any lock, which a stop from outside needs.
            FileChannel channel = begun.isStraight()
                    ? FileChannel.open(begun.path(), StandardOpenOption.WRITE)
                    : staging.calls().create(begun.workplace().fresh());
            begun.writtenBy(channel);
            return new StagedFile(begun, staging.calls(), channel, begun.isStraight());
        });
    }

    private StagedTarget begin(StagedTarget.Wish wish) throws IOException {
        StagedTarget begun = staging.begin(wish, this);
        all.add(begun);
        return begun;
    }

    /** The first step in making an output. */
    @FunctionalInterface
    private interface Opening<T> {
        T open() throws IOException;
    }

    private <T> T begun(StagedTarget begun, Opening<T> opening) throws IOException {
        try {
            return opening.open();
        } catch (IOException fault) {
            begun.abandon();
            throw OutputFault.of("cannot write", begun.asked(), fault);
        }
    }
}
