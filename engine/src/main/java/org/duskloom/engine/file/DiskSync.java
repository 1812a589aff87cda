package org.duskloom.engine.file;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.duskloom.engine.frame.ThreadFault;

/**
 * Brings the bytes of finished outputs to the disk, just before they get their names. Many files are asked for at the
 * same time: a disk that is asked for one after the other makes each a turn of its own, and takes thirty times as long.
 */
final class DiskSync {
    private static final int AT_A_TIME = 32;

    private final FileCalls calls;

    DiskSync(FileCalls calls) {
        this.calls = calls;
    }

    /** @throws IOException if one cannot be brought there: some file systems tell of a full disk this late */
    void bringToDisk(List<StagedTarget> targets) throws IOException {
        List<StagedTarget> files =
                targets.stream().filter(target -> !target.isFolder()).toList();
        syncAll(files.iterator(), file -> sync(file, file.workplace().fresh()));
        for (StagedTarget folder : targets) {
            if (folder.isFolder()) {
                syncFiles(folder);
                syncFolder(folder.workplace().fresh());
            }
        }
    }

    /** Not every file system can, and then nothing better is to be had. */
    void syncFolder(Path folder) {
        try {
            calls.syncFolder(folder);
        } catch (IOException unsupported) {
            return;
        }
    }

    private void syncFiles(StagedTarget folder) throws IOException {
        DirectoryStream<Path> files;
        try {
            files = calls.stream(folder.workplace().fresh());
        } catch (IOException fault) {
            throw faultOf(folder, fault);
        }
        try (files) {
            syncAll(files.iterator(), file -> sync(folder, file));
        }
    }

    private void sync(StagedTarget target, Path file) throws IOException {
        try {
            calls.sync(file);
        } catch (IOException fault) {
            throw faultOf(target, fault);
        }
    }

    private static IOException faultOf(StagedTarget target, IOException fault) {
        if (target.isAbandoned()) {
            return target.abandonedEarly();
        }
        return fault instanceof NoSuchFileException
                ? new IOException(
                        "cannot write " + target.asked() + ": somebody has removed what was written so far", fault)
                : OutputFault.of("cannot write", target.asked(), fault);
    }

    /** Syncs one thing. */
    @FunctionalInterface
    private interface Syncing<T> {
        void sync(T thing) throws IOException;
    }

    /** Each thread begins with one of the first, so that there are no more threads than things. */
    private static <T> void syncAll(Iterator<T> things, Syncing<T> syncing) throws IOException {
        List<Callable<Void>> workers = new ArrayList<>();
        try {
            while (workers.size() < AT_A_TIME && things.hasNext()) {
                workers.add(worker(things.next(), things, syncing));
            }
        } catch (DirectoryIteratorException fault) {
            throw rethrown(fault);
        }
        if (!workers.isEmpty()) {
            await(workers);
        }
    }

    private static <T> Callable<Void> worker(T first, Iterator<T> things, Syncing<T> syncing) {
        return () -> {
            for (Optional<T> thing = Optional.of(first); thing.isPresent(); thing = next(things)) {
                syncing.sync(thing.get());
            }
            return null;
        };
    }

    private static void await(List<Callable<Void>> workers) throws IOException {
        ExecutorService threads = Executors.newFixedThreadPool(workers.size());
        try {
            for (Future<Void> done : threads.invokeAll(workers)) {
                done.get();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped while the files were brought to the disk");
        } catch (ExecutionException failed) {
            throw rethrown(failed.getCause());
        } finally {
            threads.shutdown();
        }
    }

    private static <T> Optional<T> next(Iterator<T> things) {
        synchronized (things) {
            return things.hasNext() ? Optional.of(things.next()) : Optional.empty();
        }
    }

    private static IOException rethrown(Throwable cause) {
        return cause instanceof RuntimeException ? new IOException(cause.getMessage(), cause) : ThreadFault.of(cause);
    }
}
