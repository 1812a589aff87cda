package org.duskloom.effects.image;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads a JPEG with the reader of the JDK. The samples are taken as they are, as sRGB: a colour profile does not count,
 * nor does a note of how the camera was held. JPEG leaves the last bit of a sample to the decoder, so two builds of the
 * JDK may disagree on it.
 */
final class JpegFile {
    private JpegFile() {}

    static boolean isJpeg(byte[] file) {
        return file.length > 2 && (file[0] & 255) == 0xFF && (file[1] & 255) == 0xD8 && (file[2] & 255) == 0xFF;
    }

    static Film read(byte[] file) throws ImageException {
        if (!hasEndMark(file)) {
            throw ImageException.damaged("it ends after " + file.length + " bytes, before its end mark");
        }
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            return read(in);
        } catch (IOException | RuntimeException e) {
            throw ImageException.damaged(e.getMessage());
        } catch (LinkageError e) {
            throw new ImageException("is a JPEG, which this Java cannot read: " + e.getMessage(), "save it as PNG");
        }
    }

    /** A decoder would fill up what is missing with grey. */
    private static boolean hasEndMark(byte[] file) {
        int at = file.length - 2;
        while (at > 0 && ((file[at] & 255) != 0xFF || (file[at + 1] & 255) != 0xD9)) {
            at--;
        }
        return at > 0;
    }

    private static Film read(ImageInputStream in) throws IOException, ImageException {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName("jpeg");
        if (!readers.hasNext()) {
            throw new ImageException("is a JPEG, which this Java cannot read", "save it as PNG");
        }
        ImageReader reader = readers.next();
        try {
            reader.setInput(in, true, true);
            ImageLimits.check(reader.getWidth(0), reader.getHeight(0), 1);
            return film(reader.read(0));
        } finally {
            reader.dispose();
        }
    }

    private static Film film(BufferedImage image) throws ImageException {
        Raster raster = image.getRaster();
        int bands = raster.getNumBands();
        if (bands != 1 && bands != 3 || raster.getSampleModel().getSampleSize(0) != 8) {
            throw new ImageException("is a JPEG with " + bands + " colours a pixel", "save it as PNG");
        }
        int width = raster.getWidth();
        int height = raster.getHeight();
        int[] pixels = new int[width * height];
        int[] row = new int[width * bands];
        for (int y = 0; y < height; y++) {
            raster.getPixels(0, y, width, 1, row);
            for (int x = 0; x < width; x++) {
                pixels[y * width + x] = bands == 1
                        ? 0xFF000000 | row[x] * 0x010101
                        : 0xFF000000 | row[3 * x] << 16 | row[3 * x + 1] << 8 | row[3 * x + 2];
            }
        }
        return Film.still(width, height, pixels);
    }
}
