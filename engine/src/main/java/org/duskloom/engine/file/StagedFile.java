package org.duskloom.engine.file;

import java.io.Closeable;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;

/**
 * A file in the making. It is written beside its final name, in the folder {@code .NAME.part}; {@link #finish} brings
 * it to the disk and gives it its name, in one step that a crash cannot split. Until then, whatever stood under that
 * name stays. Closing an unfinished file leaves nothing behind, and so does {@link StagedFiles#abandonAll}.
 *
 * <p>A device, a pipe or the standard output cannot be staged: its bytes go straight through.
 *
 * <p>Written by one thread. It may be abandoned by another.
 */
public final class StagedFile implements Closeable {
    private static final int BUFFER_BYTES = 1 << 18;
    private static final ByteBuffer NONE = ByteBuffer.allocate(0);

    private final Completion completion;
    private final FileCalls calls;
    private final FileChannel channel;
    private final boolean straight;

    /** Made for the first small piece, and let go at the end: files are many, those being written few. */
    private ByteBuffer buffer = NONE;

    private long bytesTaken;
    private volatile boolean closed;

    /** @param straight whether a reader may be waiting at the other end */
    StagedFile(Completion completion, FileCalls calls, FileChannel channel, boolean straight) {
        this.completion = completion;
        this.calls = calls;
        this.channel = channel;
        this.straight = straight;
    }

    /**
     * Begins a file that becomes final by itself. Makes its folder where that is missing.
     *
     * @throws OutputRefusedException if something stands there that may not be replaced
     * @throws IOException if the file cannot be begun
     */
    public static StagedFile open(Path target, IfExists ifExists) throws IOException {
        return OutputGroup.ofOne(ifExists).open(target);
    }

    /** Whatever reads the program's standard output. Finishing does not close it. */
    public static StagedFile standardOutput() {
        @SuppressWarnings("resource") // the process owns it
        FileChannel channel = new FileOutputStream(FileDescriptor.out).getChannel();
        return new StagedFile(new StandardOutput(), new SystemCalls(), channel, true);
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

    /** The file's name as it was asked for. */
    public Path target() {
        return completion.asked();
    }

    /** How many bytes were given to it so far. */
    public long bytesTaken() {
        return bytesTaken;
    }

    /**
     * Appends bytes.
     *
     * @throws ReaderGoneException if the file is a pipe that nobody reads any more
     * @throws IOException if they cannot be written, or if the file was abandoned
     */
    public void write(byte[] bytes, int offset, int length) throws IOException {
        if (buffer.remaining() < length) {
            drain();
        }
        if (length >= BUFFER_BYTES) {
            put(ByteBuffer.wrap(bytes, offset, length));
        } else {
            makeRoom();
            buffer.put(bytes, offset, length);
        }
        bytesTaken += length;
    }

    /**
     * Writes a text as UTF-8 and finishes the file.
     *
     * @throws IOException if that fails; the file is then abandoned
     */
    public void writeWhole(String text) throws IOException {
        writeWhole(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same with bytes. */
    public void writeWhole(byte[] bytes) throws IOException {
        write(bytes, 0, bytes.length);
        finish();
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
     * All is written: brings it to the disk and gives the file its name. In an {@link OutputGroup}, both is done when
     * the group is published.
     *
     * @throws IOException if that fails; the file is then abandoned
     */
    public void finish() throws IOException {
        try {
            drain();
            settle();
        } catch (IOException fault) {
            completion.abandon();
            throw fault;
        }
        closed = true;
        completion.finished();
    }

    /** Abandons the file, if it is not finished. */
    @Override
    public void close() {
        if (!closed) {
            closed = true;
            completion.abandon();
            buffer = NONE;
        }
    }

    /** Some file systems tell of a full disk as late as this. */
    private void settle() throws IOException {
        buffer = NONE;
        if (!(completion instanceof StandardOutput)) {
            try {
                channel.close();
            } catch (IOException fault) {
                throw writeFault(fault);
            }
        }
    }

    private void append(byte value) throws IOException {
        if (!buffer.hasRemaining()) {
            drain();
            makeRoom();
        }
        buffer.put(value);
        bytesTaken++;
    }

    private void makeRoom() {
        if (buffer == NONE) {
            buffer = ByteBuffer.allocate(BUFFER_BYTES);
        }
    }

    private void drain() throws IOException {
        buffer.flip();
        put(buffer);
        buffer.clear();
    }

    private void put(ByteBuffer bytes) throws IOException {
        try {
            if (bytes.hasRemaining()) {
                calls.write(channel, bytes);
            }
        } catch (IOException fault) {
            throw writeFault(fault);
        }
    }

    private IOException writeFault(IOException fault) {
        if (completion.isAbandoned()) {
            return completion.abandonedEarly();
        }
        if (straight && ReaderGoneException.tells(fault)) {
            return new ReaderGoneException(fault);
        }
        return OutputFault.of("cannot write", target(), fault);
    }

    /** Not a file that could be found by name, and nothing to be given up. */
    private record StandardOutput() implements Completion {
        @Override
        public Path asked() {
            return Path.of("standard output");
        }

        @Override
        public void finished() {
            // It stays open: the process owns it.
        }

        @Override
        public void abandon() {
            // What is written is written.
        }

        @Override
        public boolean isAbandoned() {
            return false;
        }
    }
}
