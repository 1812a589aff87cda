package org.duskloom.engine.png;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/**
 * Plays an animated PNG without the program: every frame is made a PNG of its own, which the JDK reads, and laid over
 * those before it as W3C Portable Network Graphics, Third Edition, says for "dispose none, blend source".
 */
public final class AnimationFrames {
    private AnimationFrames() {}

    /** One frame as it is seen: colours as 0xRRGGBB, row after row, and its delay. */
    public record Shown(int[] dots, int delayNumerator, int delayDenominator) {}

    public static List<Shown> of(byte[] file) throws IOException {
        List<Shown> shown = new ArrayList<>();
        PngChunks png = PngChunks.of(file);
        ByteBuffer header = ByteBuffer.wrap(png.chunks().get(0).data());
        int width = header.getInt();
        int[] canvas = new int[width * header.getInt()];
        ByteBuffer control = null;
        int sequence = 0;
        for (PngChunks.Chunk chunk : png.chunks()) {
            ByteBuffer data = ByteBuffer.wrap(chunk.data());
            if (chunk.type().equals("fcTL")) {
                control = data;
                requireNext(sequence++, data.getInt());
            } else if (chunk.type().equals("fdAT") || chunk.type().equals("IDAT")) {
                if (chunk.type().equals("fdAT")) {
                    requireNext(sequence++, data.getInt());
                }
                byte[] pixels = new byte[data.remaining()];
                data.get(pixels);
                lay(canvas, width, control, pixels);
                int numerator = control.getShort() & 0xFFFF;
                shown.add(new Shown(canvas.clone(), numerator, control.getShort() & 0xFFFF));
                requireNext(0, control.getShort());
            }
        }
        return shown;
    }

    private static void requireNext(int expected, int found) {
        if (expected != found) {
            throw new AssertionError("found " + found + ", expected " + expected);
        }
    }

    private static void lay(int[] canvas, int canvasWidth, ByteBuffer control, byte[] pixels) throws IOException {
        int width = control.getInt();
        int height = control.getInt();
        int left = control.getInt();
        int top = control.getInt();
        BufferedImage frame = ImageIO.read(new ByteArrayInputStream(still(width, height, pixels)));
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                canvas[(top + y) * canvasWidth + left + x] = frame.getRGB(x, y) & 0xFFFFFF;
            }
        }
    }

    private static byte[] still(int width, int height, byte[] pixels) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        byte[] header = ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put((byte) 8)
                .put((byte) 2)
                .array();
        add(file, "IHDR", header);
        add(file, "IDAT", pixels);
        add(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static void add(ByteArrayOutputStream file, String type, byte[] data) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data);
        file.write(ByteBuffer.allocate(4).putInt(data.length).array());
        file.write(name);
        file.write(data);
        file.write(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    }
}
