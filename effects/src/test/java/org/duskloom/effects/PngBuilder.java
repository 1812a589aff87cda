package org.duskloom.effects;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes PNG files chunk by chunk, animated and broken ones too: W3C Portable Network Graphics, Third Edition. {@code
 * PngBuilderTest} holds it to published chunks and to another reader.
 */
public final class PngBuilder {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private final ByteArrayOutputStream file = new ByteArrayOutputStream();
    private int sequence;

    /** A file of a signature only. */
    public PngBuilder() {
        file.writeBytes(SIGNATURE);
    }

    /** A whole file of a picture with 8 bits each of red, green, blue and alpha. */
    public static byte[] still(int width, int height, int... argb) {
        return new PngBuilder()
                .header(width, height, 8, 6, false)
                .data(rows(width, argb))
                .end();
    }

    /**
     * An image of an animation.
     *
     * @param dispose 0 none, 1 background, 2 previous
     * @param blend 0 source, 1 over
     */
    public record Frame(
            int left, int top, int width, int height, int delay, int perSecond, int dispose, int blend, int... argb) {
        /** An image that replaces the whole picture. */
        public static Frame whole(int width, int height, int delay, int perSecond, int... argb) {
            return new Frame(0, 0, width, height, delay, perSecond, 0, 0, argb);
        }
    }

    /** A whole file of an animation whose first frame is also what other readers see. */
    public static byte[] animation(int width, int height, Frame... frames) {
        PngBuilder png = new PngBuilder().header(width, height, 8, 6, false).animationControl(frames.length);
        for (int i = 0; i < frames.length; i++) {
            png.frameControl(frames[i]);
            byte[] rows = rows(frames[i].width, frames[i].argb);
            if (i == 0) {
                png.data(rows);
            } else {
                png.frameData(rows);
            }
        }
        return png.end();
    }

    /** The header. */
    public PngBuilder header(int width, int height, int depth, int colorType, boolean interlaced) {
        ByteBuffer data = ByteBuffer.allocate(13).putInt(width).putInt(height);
        return chunk(
                "IHDR",
                data.put((byte) depth)
                        .put((byte) colorType)
                        .putShort((short) 0)
                        .put((byte) (interlaced ? 1 : 0))
                        .array());
    }

    /** Says how many images there are. */
    public PngBuilder animationControl(int frames) {
        return chunk("acTL", ByteBuffer.allocate(8).putInt(frames).array());
    }

    /** Says how the next image is shown. */
    public PngBuilder frameControl(Frame frame) {
        ByteBuffer data = ByteBuffer.allocate(26).putInt(sequence++);
        data.putInt(frame.width).putInt(frame.height).putInt(frame.left).putInt(frame.top);
        data.putShort((short) frame.delay).putShort((short) frame.perSecond);
        return chunk(
                "fcTL", data.put((byte) frame.dispose).put((byte) frame.blend).array());
    }

    /** The data of the image that every reader sees, from rows that begin with their filter. */
    public PngBuilder data(byte[] rows) {
        return chunk("IDAT", packed(rows));
    }

    /** The data of an image that only readers of animations see. */
    public PngBuilder frameData(byte[] rows) {
        byte[] packed = packed(rows);
        return chunk(
                "fdAT",
                ByteBuffer.allocate(packed.length + 4)
                        .putInt(sequence++)
                        .put(packed)
                        .array());
    }

    /** Any chunk. */
    public PngBuilder chunk(String type, byte... data) {
        file.writeBytes(chunkBytes(type, data));
        return this;
    }

    /** The end mark, and with it the file. */
    public byte[] end() {
        return chunk("IEND").bytes();
    }

    /** The file so far. */
    public byte[] bytes() {
        return file.toByteArray();
    }

    /** Rows of red, green, blue and alpha without a filter. */
    public static byte[] rows(int width, int... argb) {
        ByteBuffer rows = ByteBuffer.allocate(argb.length / width + argb.length * 4);
        for (int i = 0; i < argb.length; i++) {
            if (i % width == 0) {
                rows.put((byte) 0);
            }
            rows.putInt(argb[i] << 8 | argb[i] >>> 24);
        }
        return rows.array();
    }

    static byte[] chunkBytes(String type, byte... data) {
        ByteBuffer chunk = ByteBuffer.allocate(12 + data.length).putInt(data.length);
        chunk.put(type.getBytes(StandardCharsets.US_ASCII)).put(data);
        CRC32 crc = new CRC32();
        crc.update(chunk.array(), 4, 4 + data.length);
        return chunk.putInt((int) crc.getValue()).array();
    }

    private static byte[] packed(byte[] rows) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed)) {
            out.write(rows);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return packed.toByteArray();
    }
}
