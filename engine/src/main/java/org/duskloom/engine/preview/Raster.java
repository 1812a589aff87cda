package org.duskloom.engine.preview;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.png.PngWriter;

/**
 * A picture in memory, 8 bits each of red, green and blue. Colours are sRGB as {@code 0xRRGGBB}. What is drawn outside
 * the picture is cut off.
 */
public final class Raster {
    private final int width;
    private final int height;
    private final byte[] rgb;

    /** A picture of one colour. */
    public Raster(int width, int height, int ground) {
        this.width = width;
        this.height = height;
        this.rgb = new byte[Math.multiplyExact(3, Math.multiplyExact(width, height))];
        rectangle(0, 0, width, height, ground);
    }

    /** Dots across. */
    public int width() {
        return width;
    }

    /** Dots down. */
    public int height() {
        return height;
    }

    /** The colour of one dot inside the picture. */
    public int colourAt(int x, int y) {
        int at = 3 * (y * width + x);
        return (rgb[at] & 0xFF) << 16 | (rgb[at + 1] & 0xFF) << 8 | rgb[at + 2] & 0xFF;
    }

    /** Colours one dot. */
    public void dot(int x, int y, int colour) {
        if (x >= 0 && x < width && y >= 0 && y < height) {
            int at = 3 * (y * width + x);
            rgb[at] = (byte) (colour >> 16);
            rgb[at + 1] = (byte) (colour >> 8);
            rgb[at + 2] = (byte) colour;
        }
    }

    void rectangle(int left, int top, int columns, int rows, int colour) {
        for (int y = Math.max(0, top); y < Math.min(height, top + rows); y++) {
            for (int x = Math.max(0, left); x < Math.min(width, left + columns); x++) {
                dot(x, y, colour);
            }
        }
    }

    /**
     * Writes a line of text.
     *
     * @param left where its first letter begins
     * @param top where its capitals begin; marks over them stand higher
     * @param scale how many dots of the picture make one of the font
     */
    public void text(String text, int left, int top, int scale, int colour) {
        int rise = PixelFont.CAPITAL_ROW * scale;
        PixelFont.standard()
                .draw(
                        text,
                        (column, row) ->
                                rectangle(left + column * scale, top - rise + row * scale, scale, scale, colour));
    }

    /** Copies one row into a line of a picture as wide as this one. */
    void copyRow(int y, byte[] line) {
        System.arraycopy(rgb, 3 * y * width, line, 0, 3 * width);
    }

    /** Copies all rows, from the top down, into an array from a place on. */
    public void copyTo(byte[] rows, int at) {
        System.arraycopy(rgb, 0, rows, at, rgb.length);
    }

    /**
     * Writes the picture as PNG and finishes the file.
     *
     * @throws IOException if that fails; the file is then abandoned
     */
    public void writePng(StagedFile file) throws IOException {
        try (file) {
            writePng(file.stream());
            file.finish();
        }
    }

    private void writePng(OutputStream out) throws IOException {
        try (PngWriter png = new PngWriter(out, width, height, PngWriter.FAST)) {
            for (int y = 0; y < height; y++) {
                png.row(rgb, 3 * y * width);
            }
            png.finish();
        }
    }

    /** The picture as a PNG in memory. */
    byte[] png() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            writePng(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }
}
