package org.duskloom.engine.file;

import java.io.Closeable;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/**
 * A file in the making. It is written beside its final name, as {@code .NAME.part-*}; {@link #finish} brings it to the
 * disk and gives it its name, in one step that a crash cannot split. Until then, whatever stood under that name stays.
 * Closing an unfinished file leaves nothing behind, and so does {@link StagedFiles#abandonAll}.
 *
 * <p>A device, a pipe or the standard output cannot be staged: its bytes go straight through.
 *
 * <p>Written by one thread. It may be abandoned by another.
 */
public final class StagedFile implements Closeable {
    private static final int BUFFER_BYTES = 1 << 18;

    private enum State {
        OPEN,
        FINISHED,
        PUBLISHED,
        ABANDONED
    }

    private final Destination destination;
    private final IfExists ifExists;
    private final Optional<Path> part;
    private final Optional<OutputGroup> group;
    private final FileChannel channel;
    private final ByteBuffer buffer = ByteBuffer.allocateDirect(BUFFER_BYTES);
    private final AtomicReference<State> state = new AtomicReference<>(State.OPEN);
    private long bytesTaken;

    private StagedFile(
            Destination destination,
            IfExists ifExists,
            Optional<Path> part,
            Optional<OutputGroup> group,
            FileChannel channel) {
        this.destination = destination;
        this.ifExists = ifExists;
        this.part = part;
        this.group = group;
        this.channel = channel;
    }

    /**
     * Begins a file that becomes final by itself. Makes its folder where that is missing.
     *
     * @throws OutputRefusedException if something stands there that may not be replaced
     * @throws IOException if the file cannot be begun
     */
    public static StagedFile open(Path target, IfExists ifExists) throws IOException {
        return open(target, ifExists, Optional.empty());
    }

    /** Whatever reads the program's standard output. Finishing does not close it. */
    public static StagedFile standardOutput() {
        @SuppressWarnings("resource") // the process owns it
        FileChannel channel = new FileOutputStream(FileDescriptor.out).getChannel();
        return new StagedFile(
                Destination.STANDARD_OUTPUT, IfExists.REPLACE, Optional.empty(), Optional.empty(), channel);
    }

    /**
     * Refuses a target that is one of the inputs, under whatever name or link.
     *
     * @throws OutputRefusedException if it is
     * @throws IOException if the two cannot be compared
     */
    public static void refuseInput(Path target, Collection<Path> inputs) throws IOException {
        for (Path input : inputs) {
            if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
                throw new OutputRefusedException(
                        target + " is an input (" + input + "); give the output a name of its own");
            }
        }
    }

    static StagedFile open(Path target, IfExists ifExists, Optional<OutputGroup> group) throws IOException {
        return StagedFiles.begin(target, ifExists, destination -> {
            if (destination.straight()) {
                FileChannel channel = FileChannel.open(destination.path(), StandardOpenOption.WRITE);
                return new StagedFile(destination, ifExists, Optional.empty(), group, channel);
            }
            Path part = PartFiles.fresh(destination.path());
            FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            return new StagedFile(destination, ifExists, Optional.of(part), group, channel);
        });
    }

    /** The file's name as it was asked for. */
    public Path target() {
        return destination.asked();
    }

    /** How many bytes were given to it so far. */
    public long bytesTaken() {
        return bytesTaken;
    }

    /**
     * Appends bytes.
     *
     * @throws IOException if they cannot be written, or if the file was abandoned
     */
    public void write(byte[] bytes, int offset, int length) throws IOException {
        int from = offset;
        int end = offset + length;
        while (from < end) {
            if (!buffer.hasRemaining()) {
                drain();
            }
            int step = Math.min(buffer.remaining(), end - from);
            buffer.put(bytes, from, step);
            from += step;
        }
        bytesTaken += length;
    }

    /** The same as a stream. Flushing or closing it does not finish the file. */
    public OutputStream stream() {
        return new OutputStream() {
            @Override
            public void write(int value) throws IOException {
                append((byte) value);
            }

            @Override
            public void write(byte[] bytes, int offset, int length) throws IOException {
                StagedFile.this.write(bytes, offset, length);
            }
        };
    }

    /**
     * All is written: brings it to the disk and gives the file its name. In an {@link OutputGroup}, the name is given
     * when the group is published.
     *
     * @throws IOException if that fails; the file is then abandoned
     */
    public void finish() throws IOException {
        try {
            drain();
            settle();
        } catch (IOException fault) {
            abandon();
            throw fault;
        }
        if (destination.straight()) {
            state.set(State.PUBLISHED);
        } else if (!state.compareAndSet(State.OPEN, State.FINISHED)) {
            throw abandonedEarly();
        } else if (group.isPresent()) {
            group.get().finished(this);
        } else {
            StagedFiles.publish(List.of(this));
        }
    }

    /** Abandons the file, if it is not finished. */
    @Override
    public void close() {
        if (state.get() == State.OPEN) {
            abandon();
        }
    }

    Destination destination() {
        return destination;
    }

    IfExists ifExists() {
        return ifExists;
    }

    /** The file beside the final name that holds the bytes. Only a file that is not straight has one. */
    Path part() {
        return part.orElseThrow();
    }

    boolean isOpen() {
        return state.get() == State.OPEN;
    }

    boolean isAbandoned() {
        return state.get() == State.ABANDONED;
    }

    boolean isFinished() {
        return state.get() == State.FINISHED;
    }

    void markPublished() {
        state.set(State.PUBLISHED);
    }

    /** Removes what was written, unless it is final. From any thread. */
    void abandon() {
        State before = state.getAndUpdate(now -> now == State.PUBLISHED ? now : State.ABANDONED);
        if (before == State.OPEN || before == State.FINISHED) {
            closeQuietly();
            part.ifPresent(PartFiles::delete);
            StagedFiles.forget(this);
        }
    }

    private void append(byte value) throws IOException {
        if (!buffer.hasRemaining()) {
            drain();
        }
        buffer.put(value);
        bytesTaken++;
    }

    private void drain() throws IOException {
        buffer.flip();
        try {
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
        } catch (IOException fault) {
            throw writeFault(fault);
        }
        buffer.clear();
    }

    /** Whether the bytes are on the disk is known only now: some file systems tell of a full disk this late. */
    private void settle() throws IOException {
        try {
            if (!destination.straight()) {
                channel.force(true);
            }
            if (destination != Destination.STANDARD_OUTPUT) {
                channel.close();
            }
        } catch (IOException fault) {
            throw writeFault(fault);
        }
    }

    private IOException writeFault(IOException fault) {
        return state.get() == State.ABANDONED
                ? abandonedEarly()
                : OutputFault.of("cannot write", destination.asked(), fault);
    }

    IOException abandonedEarly() {
        return new IOException(destination.asked() + " was abandoned before it was complete");
    }

    private void closeQuietly() {
        if (destination == Destination.STANDARD_OUTPUT) {
            return;
        }
        try {
            channel.close();
        } catch (IOException alreadyLost) {
            // The file is being thrown away: there is nothing left to save.
            return;
        }
    }
}
