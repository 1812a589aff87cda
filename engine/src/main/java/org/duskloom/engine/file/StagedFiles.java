package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * All files in the making in this process, so that a run that is stopped from outside can put them away. Safe for use by
 * several threads: stopping and publishing exclude each other, so a group of files is published whole or not at all.
 */
public final class StagedFiles {
    private static final Object LOCK = new Object();
    private static final Set<StagedFile> OPEN = new LinkedHashSet<>();
    private static final CreatedFolders FOLDERS = new CreatedFolders();
    private static boolean stopping;

    private StagedFiles() {}

    /** Begins one staged file at a destination that was looked at. */
    @FunctionalInterface
    interface Opening {
        StagedFile at(Destination destination) throws IOException;
    }

    /**
     * Removes everything that is not final: files in the making, and folders that were made for them and are empty. What
     * stood under the final names stays. Writing to an abandoned file fails from then on.
     *
     * @return how many files were abandoned
     */
    public static int abandonAll() {
        synchronized (LOCK) {
            List<StagedFile> open = List.copyOf(OPEN);
            open.forEach(StagedFile::abandon);
            FOLDERS.removeEmpty();
            return open.size();
        }
    }

    /** Has {@link #abandonAll} called when the JVM stops, as it does on SIGINT and SIGTERM. Nothing is begun after that. */
    public static void abandonOnShutdown() {
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            synchronized (LOCK) {
                                stopping = true;
                                abandonAll();
                            }
                        },
                        "abandon-staged-files"));
    }

    static StagedFile begin(Path target, IfExists ifExists, Opening opening) throws IOException {
        Destination destination;
        synchronized (LOCK) {
            destination = resolve(target, ifExists);
            if (!destination.straight()) {
                return beginAside(destination, opening);
            }
        }
        // Opening a pipe waits for its reader: not under the lock, which a stop from outside needs.
        return open(destination, opening);
    }

    /** Gives finished files their names, all of them or none. */
    static void publish(List<StagedFile> files) throws IOException {
        synchronized (LOCK) {
            Publication publication = new Publication(files);
            try {
                publication.run();
            } catch (IOException fault) {
                files.forEach(StagedFile::abandon);
                throw fault;
            }
            for (StagedFile file : files) {
                file.markPublished();
                OPEN.remove(file);
                FOLDERS.keep(file.destination().path().getParent());
            }
        }
    }

    static void forget(StagedFile file) {
        synchronized (LOCK) {
            OPEN.remove(file);
            FOLDERS.removeEmpty();
        }
    }

    private static StagedFile beginAside(Destination destination, Opening opening) throws IOException {
        refuseSecond(destination);
        PartFiles.removeStrays(destination.path());
        try {
            StagedFile file = open(destination, opening);
            OPEN.add(file);
            return file;
        } catch (IOException fault) {
            FOLDERS.removeEmpty();
            throw fault;
        }
    }

    private static Destination resolve(Path target, IfExists ifExists) throws IOException {
        if (stopping) {
            throw new IOException("the run is being stopped");
        }
        try {
            return Destination.resolve(target, ifExists, FOLDERS);
        } catch (IOException fault) {
            FOLDERS.removeEmpty();
            throw OutputFault.of("cannot write", target, fault);
        }
    }

    private static StagedFile open(Destination destination, Opening opening) throws IOException {
        try {
            return opening.at(destination);
        } catch (IOException fault) {
            throw OutputFault.of("cannot write", destination.asked(), fault);
        }
    }

    private static void refuseSecond(Destination destination) throws OutputRefusedException {
        for (StagedFile other : OPEN) {
            if (other.destination().path().equals(destination.path())) {
                throw new OutputRefusedException(
                        destination.asked() + " is the name of two outputs; give each a name of its own");
            }
        }
    }
}
