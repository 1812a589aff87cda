package org.duskloom.engine.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.regex.Pattern;

/**
 * A folder of files in the making, which gets its name as a whole: one file for each frame, say. Nothing is kept in
 * memory of a file that is complete, so there may be any number. There are no folders within.
 *
 * <p>Several threads may write different files at the same time. It may be abandoned by another.
 */
public final class StagedFolder implements Closeable {
    private final StagedTarget target;
    private final Pattern members;
    private final FileCalls calls;
    private final Set<Closeable> writing = ConcurrentHashMap.newKeySet();
    private final AtomicLong files = new AtomicLong();

    /** Files are made by many at a time, or the folder is given up by one. */
    private final ReadWriteLock lock = new ReentrantReadWriteLock();

    StagedFolder(StagedTarget target, Pattern members, FileCalls calls) {
        this.target = target;
        this.members = members;
        this.calls = calls;
        target.writtenBy(this::closeFiles);
    }

    /** The folder's name as it was asked for. */
    public Path target() {
        return target.asked();
    }

    /** How many files are complete. */
    public long files() {
        return files.get();
    }

    /**
     * Writes a whole file.
     *
     * @throws IllegalArgumentException if a file of this folder may not have that name
     * @throws OutputRefusedException if the folder has a file of that name
     * @throws IOException if it cannot be written, or if the folder was abandoned
     */
    public void write(String name, byte[] bytes, int offset, int length) throws IOException {
        whole(name, () -> {
            try (FileChannel channel = create(name)) {
                calls.write(channel, ByteBuffer.wrap(bytes, offset, length));
            }
            return files.incrementAndGet();
        });
    }

    /**
     * Begins a file that is written piece by piece.
     *
     * @throws IllegalArgumentException if a file of this folder may not have that name
     * @throws OutputRefusedException if the folder has a file of that name
     * @throws IOException if it cannot be begun, or if the folder was abandoned
     */
    public StagedFile open(String name) throws IOException {
        return whole(name, () -> {
            FileChannel channel = create(name);
            writing.add(channel);
            return new StagedFile(new Member(name, channel), calls, channel, false);
        });
    }

    /**
     * All files are written. The folder gets its name when its {@link OutputGroup} is published.
     *
     * @throws IllegalStateException if a file is not finished
     * @throws IOException if the folder or one of its files was abandoned
     */
    public void finish() throws IOException {
        if (target.isAbandoned()) {
            throw target.abandonedEarly();
        }
        if (!writing.isEmpty()) {
            throw new IllegalStateException("a file in " + target() + " is not finished");
        }
        target.finished();
    }

    /** Abandons the folder, if it is not finished. */
    @Override
    public void close() {
        if (target.isOpen()) {
            target.abandon();
        }
    }

    private interface Work<T> {
        T run() throws IOException;
    }

    /** Without one of its files the folder is not whole, and is given up. */
    private <T> T whole(String name, Work<T> work) throws IOException {
        IOException told;
        lock.readLock().lock();
        try {
            return work.run();
        } catch (IOException fault) {
            told = fault(name, fault);
        } finally {
            lock.readLock().unlock();
        }
        target.abandon();
        throw told;
    }

    private FileChannel create(String name) throws IOException {
        if (!members.matcher(name).matches() || name.contains("/") || name.contains("\\")) {
            throw new IllegalArgumentException("a file in " + target() + " cannot be called " + name);
        }
        if (target.isAbandoned()) {
            throw target.abandonedEarly();
        }
        return calls.create(target.workplace().fresh().resolve(name));
    }

    private IOException fault(String name, IOException fault) {
        if (target.isAbandoned()) {
            return target.abandonedEarly();
        }
        Path file = target().resolve(name);
        if (fault instanceof FileAlreadyExistsException) {
            return new OutputRefusedException(file + " is the name of two outputs; give each a name of its own");
        }
        return OutputFault.of("cannot write", file, fault);
    }

    private void closeFiles() throws IOException {
        lock.writeLock().lock();
        try {
            for (Closeable open : writing) {
                open.close();
            }
        } finally {
            lock.writeLock().unlock();
        }
    }

    /** One file of the folder. Without it the folder is not whole. */
    private final class Member implements Completion {
        private final String name;
        private final FileChannel channel;

        Member(String name, FileChannel channel) {
            this.name = name;
            this.channel = channel;
        }

        @Override
        public Path asked() {
            return target().resolve(name);
        }

        @Override
        public void finished() throws IOException {
            if (isAbandoned()) {
                throw abandonedEarly();
            }
            writing.remove(channel);
            files.incrementAndGet();
        }

        @Override
        public void abandon() {
            target.abandon();
        }

        @Override
        public boolean isAbandoned() {
            return target.isAbandoned();
        }
    }
}
