package org.duskloom.engine.locate;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held, as it writes into a JPEG: tag 274 (0112 hex) of Exif (CIPA DC-008), by the values of TIFF
 * 6.0, which say where row 0 and column 0 of the stored picture belong.
 */
public enum Orientation {
    /** 1: stored as it stands. */
    TOP_LEFT,
    /** 2: mirrored, left for right. */
    TOP_RIGHT,
    /** 3: upside down. */
    BOTTOM_RIGHT,
    /** 4: mirrored, top for bottom. */
    BOTTOM_LEFT,
    /** 5: mirrored along the diagonal from the top left. */
    LEFT_TOP,
    /** 6: to be turned by a quarter, clockwise. */
    RIGHT_TOP,
    /** 7: mirrored along the other diagonal. */
    RIGHT_BOTTOM,
    /** 8: to be turned by a quarter, counter-clockwise. */
    LEFT_BOTTOM;

    private static final int TAG = 0x0112;
    private static final int SHORT = 3;

    /** Whether rows become columns. */
    public boolean isOnItsSide() {
        return ordinal() >= LEFT_TOP.ordinal();
    }

    /** The size of a picture that is stored in another one. */
    public PictureSize upright(int storedWidth, int storedHeight) {
        return isOnItsSide() ? new PictureSize(storedHeight, storedWidth) : new PictureSize(storedWidth, storedHeight);
    }

    /** Which dot of the upright picture, counted by rows, a stored dot becomes. */
    public int dot(int x, int y, int storedWidth, int storedHeight) {
        int right = storedWidth - 1 - x;
        int bottom = storedHeight - 1 - y;
        return switch (this) {
            case TOP_LEFT -> y * storedWidth + x;
            case TOP_RIGHT -> y * storedWidth + right;
            case BOTTOM_RIGHT -> bottom * storedWidth + right;
            case BOTTOM_LEFT -> bottom * storedWidth + x;
            case LEFT_TOP -> x * storedHeight + y;
            case RIGHT_TOP -> x * storedHeight + bottom;
            case RIGHT_BOTTOM -> right * storedHeight + bottom;
            case LEFT_BOTTOM -> right * storedHeight + y;
        };
    }

    /**
     * Reads it from the start of a JPEG. Where it does not say, or says it wrongly, the picture is taken as stored.
     *
     * @param jpeg at its first byte; read no further than to its first picture data
     * @throws IOException if it cannot be read
     */
    public static Orientation ofJpeg(InputStream jpeg) throws IOException {
        DataInputStream in = new DataInputStream(jpeg);
        try {
            if (in.readUnsignedShort() != 0xFFD8) {
                return TOP_LEFT;
            }
            for (int marker = JpegMarker.ofSegment(in); marker != JpegMarker.NONE; marker = JpegMarker.ofSegment(in)) {
                byte[] segment = new byte[Math.max(0, in.readUnsignedShort() - 2)];
                in.readFully(segment);
                if (marker == 0xFFE1 && isExif(segment)) {
                    return ofExif(
                            ByteBuffer.wrap(segment, 6, segment.length - 6).slice());
                }
            }
            return TOP_LEFT;
        } catch (EOFException cutOff) {
            return TOP_LEFT;
        }
    }

    private static boolean isExif(byte[] segment) {
        return segment.length >= 14
                && segment[0] == 'E'
                && segment[1] == 'x'
                && segment[2] == 'i'
                && segment[3] == 'f'
                && segment[4] == 0;
    }

    /** A TIFF header, then the first directory: entries of 12 bytes, tag, type, count and value. */
    private static Orientation ofExif(ByteBuffer tiff) {
        int order = tiff.getShort(0);
        if (order != 0x4949 && order != 0x4D4D) {
            return TOP_LEFT;
        }
        tiff.order(order == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long directory = tiff.getInt(4) & 0xFFFFFFFFL;
        if (directory + 2 > tiff.limit()) {
            return TOP_LEFT;
        }
        int entries = tiff.getShort((int) directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            long at = directory + 2 + 12L * i;
            if (at + 12 > tiff.limit()) {
                return TOP_LEFT;
            }
            if ((tiff.getShort((int) at) & 0xFFFF) == TAG && tiff.getShort((int) at + 2) == SHORT) {
                int value = tiff.getShort((int) at + 8) & 0xFFFF;
                return value >= 1 && value <= values().length ? values()[value - 1] : TOP_LEFT;
            }
        }
        return TOP_LEFT;
    }
}
