package org.duskloom.effects.image;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;

/** Unpacks the rows of a PNG image: W3C Portable Network Graphics, Third Edition, "Filtering" and "Interlacing". */
final class PngRows {
    private static final int FILTERS = 5;

    /** First column, first row, and steps to the next ones, of the seven passes of an interlaced picture. */
    private static final int[][] PASSES = {
        {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
    };

    private static final int[][] ONE_PASS = {{0, 0, 1, 1}};

    private final PngHeader header;
    private final PngPixels samples;
    private final InputStream rows;
    private final int[] pixels;

    private PngRows(PngHeader header, PngPixels samples, InputStream rows) {
        this.header = header;
        this.samples = samples;
        this.rows = rows;
        pixels = new int[header.width() * header.height()];
    }

    /**
     * The pixels of an image.
     *
     * @param header says the size of this image
     * @param compressed its rows, as they stand in the chunks
     */
    static int[] pixels(PngHeader header, PngPixels samples, InputStream compressed) throws ImageException {
        try (InputStream rows = new InflaterInputStream(compressed)) {
            PngRows reader = new PngRows(header, samples, rows);
            for (int[] pass : header.interlaced() ? PASSES : ONE_PASS) {
                reader.read(pass[0], pass[1], pass[2], pass[3]);
            }
            return reader.pixels;
        } catch (EOFException e) {
            throw ImageException.damaged("the data of an image end before its last row");
        } catch (ZipException e) {
            throw ImageException.damaged("the data of an image cannot be unpacked");
        } catch (IOException e) {
            throw ImageException.damaged(e.getMessage());
        }
    }

    private void read(int left, int top, int stepX, int stepY) throws IOException, ImageException {
        int count = (header.width() - left + stepX - 1) / stepX;
        if (count <= 0) {
            return;
        }
        byte[] above = new byte[header.rowBytes(count) + 1];
        byte[] row = new byte[above.length];
        for (int y = top; y < header.height(); y += stepY) {
            if (rows.readNBytes(row, 0, row.length) < row.length) {
                throw new EOFException();
            }
            unfilter(row, above, header.pixelBytes());
            for (int i = 0; i < count; i++) {
                pixels[y * header.width() + left + i * stepX] = samples.pixel(row, i);
            }
            byte[] spare = above;
            above = row;
            row = spare;
        }
    }

    /** Turns the differences of a row, behind the number of its filter, into samples. */
    static void unfilter(byte[] row, byte[] above, int pixelBytes) throws ImageException {
        int filter = row[0];
        if (filter < 0 || filter >= FILTERS) {
            throw ImageException.damaged("a row has the filter " + filter + ", which no PNG has");
        }
        for (int i = 1; filter != 0 && i < row.length; i++) {
            int left = i > pixelBytes ? row[i - pixelBytes] & 255 : 0;
            int up = above[i] & 255;
            int upLeft = i > pixelBytes ? above[i - pixelBytes] & 255 : 0;
            row[i] += (byte)
                    switch (filter) {
                        case 1 -> left;
                        case 2 -> up;
                        case 3 -> (left + up) / 2;
                        default -> paeth(left, up, upLeft);
                    };
        }
    }

    /** The neighbour that is nearest to left + up − upLeft; of equally near ones left before up before upLeft. */
    static int paeth(int left, int up, int upLeft) {
        int guess = left + up - upLeft;
        int fromLeft = Math.abs(guess - left);
        int fromUp = Math.abs(guess - up);
        int fromUpLeft = Math.abs(guess - upLeft);
        if (fromLeft <= fromUp && fromLeft <= fromUpLeft) {
            return left;
        }
        return fromUp <= fromUpLeft ? up : upLeft;
    }
}
