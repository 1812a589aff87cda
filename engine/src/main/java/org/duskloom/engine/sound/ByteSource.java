package org.duskloom.engine.sound;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Bytes one after the other from a file or a pipe, with their place. Looks ahead a little, never back. */
final class ByteSource implements Closeable {
    private static final int BUFFER_BYTES = 1 << 16;

    private final InputStream in;
    private final byte[] buffer = new byte[BUFFER_BYTES];
    private int from;
    private int to;
    private long consumed;

    ByteSource(InputStream in) {
        this.in = in;
    }

    /** How many bytes were taken so far. */
    long position() {
        return consumed;
    }

    /** The next bytes without taking them: as many as asked for, up to the buffer's size, or fewer at the end. */
    byte[] peek(int count) throws IOException {
        fill(count);
        return Arrays.copyOfRange(buffer, from, Math.min(to, from + count));
    }

    /** Takes bytes into an array; gives how many there were, fewer than asked for only at the end. */
    int read(byte[] into, int count) throws IOException {
        int done = 0;
        while (done < count && fill(1)) {
            int step = Math.min(count - done, to - from);
            System.arraycopy(buffer, from, into, done, step);
            take(step);
            done += step;
        }
        return done;
    }

    /** Takes exactly so many bytes of a header. */
    byte[] header(int count, String what) throws IOException, SoundException {
        byte[] bytes = new byte[count];
        if (read(bytes, count) < count) {
            throw endsInside(what);
        }
        return bytes;
    }

    /** Takes and forgets; gives how many bytes there were. */
    long skip(long count) throws IOException {
        long done = 0;
        while (done < count && fill(1)) {
            int step = (int) Math.min(count - done, to - from);
            take(step);
            done += step;
        }
        return done;
    }

    /** The fault that there is nothing more where a header should go on. */
    SoundException endsInside(String what) {
        return new SoundException(
                consumed, "the file ends inside " + what, "it was not copied whole; copy or save it once more");
    }

    /** Four bytes as a chunk's name. */
    static String word(byte[] bytes, int at) {
        return new String(bytes, at, 4, StandardCharsets.ISO_8859_1);
    }

    /**
     * Refuses a file that ends here, before its samples.
     *
     * @param missing the chunk that is to come
     */
    void requireChunk(String missing) throws IOException, SoundException {
        if (peek(1).length == 0) {
            throw new SoundException(
                    position(),
                    "the file ends before the samples: there is no chunk \"" + missing + '"',
                    "it was not copied whole; copy or save it once more");
        }
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    /** Sees to it that so many bytes lie in the buffer; whether they do. */
    private boolean fill(int wanted) throws IOException {
        int count = Math.min(wanted, BUFFER_BYTES);
        if (to - from < count && from > 0) {
            System.arraycopy(buffer, from, buffer, 0, to - from);
            to -= from;
            from = 0;
        }
        while (to - from < count) {
            int got = in.read(buffer, to, BUFFER_BYTES - to);
            if (got < 0) {
                return false;
            }
            to += got;
        }
        return true;
    }

    private void take(int count) {
        from += count;
        consumed += count;
    }
}
