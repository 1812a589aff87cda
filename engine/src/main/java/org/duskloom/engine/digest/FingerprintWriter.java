package org.duskloom.engine.digest;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.function.BiConsumer;

/**
 * Takes a value apart by part, in a fixed order, and makes its fingerprint. Each part goes in as a letter for its kind,
 * its length where that is not fixed, and its bytes, the most significant first, so that no two different sequences of
 * parts have the same bytes. Numbers go in as their bits (IEEE 754), never as decimals, which JDKs round differently.
 * For one thread.
 */
public final class FingerprintWriter {
    private static final int BUFFER_BYTES = 1 << 9;

    private final MessageDigest digest = sha256();
    private final ByteBuffer buffer = ByteBuffer.allocate(BUFFER_BYTES);

    /**
     * A writer for a kind of value.
     *
     * @param kind what the value is, with the version of its canonical form: {@code "cue/1"}
     */
    public FingerprintWriter(String kind) {
        text(kind);
    }

    /** Adds a word, a name or any other text; also one that is no Unicode text, for want of half a letter. */
    public FingerprintWriter text(String text) {
        boolean whole = isWhole(text);
        byte[] bytes = whole ? text.getBytes(StandardCharsets.UTF_8) : codeUnits(text);
        head(whole ? 't' : 'u', bytes.length);
        flush();
        digest.update(bytes);
        return this;
    }

    /** Whether all surrogates in it stand in pairs. An encoder is not made for the usual text that has none. */
    private static boolean isWhole(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                return StandardCharsets.UTF_8.newEncoder().canEncode(text);
            }
        }
        return true;
    }

    /** No charset has bytes for half a letter: Java puts a question mark in its place. */
    private static byte[] codeUnits(String text) {
        ByteBuffer bytes = ByteBuffer.allocate(Character.BYTES * text.length());
        bytes.asCharBuffer().put(text);
        return bytes.array();
    }

    /** Adds a whole number. */
    public FingerprintWriter whole(long value) {
        room(Long.BYTES + 1).put((byte) 'w').putLong(value);
        return this;
    }

    /** Adds a number; zero and negative zero are two numbers. */
    public FingerprintWriter number(double value) {
        room(Double.BYTES + 1).put((byte) 'n').putLong(Double.doubleToLongBits(value));
        return this;
    }

    /** Adds a yes or no. */
    public FingerprintWriter flag(boolean value) {
        room(2).put((byte) 'f').put((byte) (value ? 1 : 0));
        return this;
    }

    /** Adds a value that has a fingerprint already. */
    public FingerprintWriter part(Fingerprint part) {
        room(1).put((byte) 'p');
        flush();
        digest.update(HexFormat.of().parseHex(part.hex()));
        return this;
    }

    /** Adds a value by its parts. */
    public FingerprintWriter value(Fingerprinted value) {
        value.addTo(this);
        return this;
    }

    /** Adds numbers, and how many there are. */
    public FingerprintWriter numbers(double[] values) {
        head('N', values.length);
        for (double value : values) {
            room(Double.BYTES).putLong(Double.doubleToLongBits(value));
        }
        return this;
    }

    /** Adds whole numbers, and how many there are. */
    public FingerprintWriter wholes(int[] values) {
        head('W', values.length);
        for (int value : values) {
            room(Integer.BYTES).putInt(value);
        }
        return this;
    }

    /**
     * Adds a list: how many items there are, then each.
     *
     * @param add adds an item
     */
    public <T> FingerprintWriter list(Collection<T> items, BiConsumer<FingerprintWriter, T> add) {
        head('l', items.size());
        items.forEach(item -> add.accept(this, item));
        return this;
    }

    /** The fingerprint of all parts; the writer is used up. */
    public Fingerprint finish() {
        flush();
        return new Fingerprint(HexFormat.of().formatHex(digest.digest()));
    }

    private void head(char kind, int count) {
        room(Integer.BYTES + 1).put((byte) kind).putInt(count);
    }

    private ByteBuffer room(int bytes) {
        if (buffer.remaining() < bytes) {
            flush();
        }
        return buffer;
    }

    private void flush() {
        digest.update(buffer.array(), 0, buffer.position());
        buffer.clear();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
