package org.duskloom.engine.file;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Brings the bytes of finished outputs to the disk, just before they get their names. Many files are asked for at the same
 * time: a disk that is asked for one after the other makes each a turn of its own, and takes thirty times as long.
 */
final class DiskSync {
    private static final int AT_A_TIME = 32;

    private final FileCalls calls;

    DiskSync(FileCalls calls) {
        this.calls = calls;
    }

    /** @throws IOException if one cannot be brought there: some file systems tell of a full disk this late */
    void bringToDisk(List<StagedTarget> targets) throws IOException {
        List<Callable<Void>> files = new ArrayList<>();
        List<Path> folders = new ArrayList<>();
        for (StagedTarget target : targets) {
            Path fresh = target.workplace().fresh();
            if (target.isFolder()) {
                list(target).forEach(file -> files.add(sync(target, file)));
                folders.add(fresh);
            } else {
                files.add(sync(target, fresh));
            }
        }
        runAll(files);
        folders.forEach(this::syncFolder);
    }

    /** Not every file system can, and then nothing better is to be had. */
    void syncFolder(Path folder) {
        try {
            calls.syncFolder(folder);
        } catch (IOException unsupported) {
            return;
        }
    }

    private List<Path> list(StagedTarget target) throws IOException {
        try {
            return calls.list(target.workplace().fresh());
        } catch (IOException fault) {
            throw faultOf(target, fault);
        }
    }

    private Callable<Void> sync(StagedTarget target, Path file) {
        return () -> {
            try {
                calls.sync(file);
                return null;
            } catch (IOException fault) {
                throw faultOf(target, fault);
            }
        };
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

    private static void runAll(List<Callable<Void>> files) throws IOException {
        if (files.isEmpty()) {
            return;
        }
        ExecutorService threads = Executors.newFixedThreadPool(Math.min(AT_A_TIME, files.size()));
        try {
            for (Future<Void> file : threads.invokeAll(files)) {
                file.get();
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

    private static IOException rethrown(Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof IOException fault ? fault : new IOException(cause);
    }
}
