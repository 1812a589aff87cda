package org.duskloom.cli;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import org.duskloom.engine.locate.Orientation;
import org.duskloom.engine.locate.PictureSize;
import org.duskloom.engine.locate.PicturesRefusedException;

/**
 * A photo, read by the JDK: the one class of {@code cli} that knows its pictures. Samples are taken as they are, as
 * sRGB; a colour profile does not count. The JDK does not look how the camera was held, so that is read here.
 */
final class PhotoFile {
    /** Shares of red, green and blue in brightness, in 256ths: those of ITU-R BT.601, as in JPEG. */
    private static final int RED = 77;

    private static final int GREEN = 150;
    private static final int BLUE = 29;

    private final Path file;
    private final PhotoFormat format;
    private final Orientation orientation;

    /** Where photos of one size are read into, one after the other, as each is tens of megabytes. */
    static final class Room {
        private BufferedImage image;
    }

    private PhotoFile(Path file, PhotoFormat format, Orientation orientation) {
        this.file = file;
        this.format = format;
        this.orientation = orientation;
    }

    /**
     * Looks at the start of a file.
     *
     * @throws PicturesRefusedException if it is no JPEG and no PNG
     */
    static PhotoFile open(Path file) throws IOException, PicturesRefusedException {
        PhotoFormat format = PhotoFormat.of(file);
        if (!format.isRead()) {
            throw format.refusal(file);
        }
        return new PhotoFile(file, format, format == PhotoFormat.JPEG ? orientation(file) : Orientation.TOP_LEFT);
    }

    private static Orientation orientation(Path file) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            return Orientation.ofJpeg(in);
        }
    }

    /** How the camera was held. */
    Orientation orientation() {
        return orientation;
    }

    /** Its size when it stands upright. */
    PictureSize size() throws IOException, PicturesRefusedException {
        return reading(reader -> orientation.upright(reader.getWidth(0), reader.getHeight(0)));
    }

    /**
     * Reads its brightness, as it stands upright.
     *
     * @param room is written over
     */
    void read(byte[] codes, Room room) throws IOException, PicturesRefusedException {
        if (format == PhotoFormat.JPEG && !JpegEnd.isThere(file)) {
            throw damaged("it ends before its end mark");
        }
        BufferedImage image = reading(reader -> {
            ImageReadParam into = reader.getDefaultReadParam();
            if (room.image != null && fits(room.image, reader)) {
                into.setDestination(room.image);
            }
            return reader.read(0, into);
        });
        if (image.getWidth() * image.getHeight() != codes.length) {
            throw damaged("it has changed while it was read");
        }
        if (isPlainBytes(image)) {
            takeBytes(image, codes);
        } else {
            takeColours(image, codes);
        }
        room.image = image;
    }

    private static boolean fits(BufferedImage room, ImageReader reader) throws IOException {
        return room.getWidth() == reader.getWidth(0)
                && room.getHeight() == reader.getHeight(0)
                && isPlainBytes(room)
                && reader.getImageTypes(0).next().getBufferedImageType() == room.getType();
    }

    private interface Reading<T> {
        T by(ImageReader reader) throws IOException;
    }

    private <T> T reading(Reading<T> reading) throws IOException, PicturesRefusedException {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.readerName());
        if (!readers.hasNext()) {
            throw damaged("this Java has no reader for it");
        }
        ImageReader reader = readers.next();
        try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
            reader.setInput(in, true, true);
            return reading.by(reader);
        } catch (RuntimeException | javax.imageio.IIOException broken) {
            throw damaged(String.valueOf(broken.getMessage()));
        } finally {
            reader.dispose();
        }
    }

    private PicturesRefusedException damaged(String why) {
        return new PicturesRefusedException(
                file.toString(), "cannot be read as " + format + ": " + why, "copy it from the camera again");
    }

    private static boolean isPlainBytes(BufferedImage image) {
        Raster raster = image.getRaster();
        int bands = raster.getNumBands();
        return raster.getDataBuffer() instanceof DataBufferByte
                && raster.getSampleModel() instanceof PixelInterleavedSampleModel
                && (image.getType() == BufferedImage.TYPE_BYTE_GRAY && bands == 1
                        || image.getType() == BufferedImage.TYPE_3BYTE_BGR && bands == 3);
    }

    private void takeBytes(BufferedImage image, byte[] codes) {
        byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int width = image.getWidth();
        int height = image.getHeight();
        boolean grey = image.getRaster().getNumBands() == 1;
        int at = 0;
        for (int y = 0; y < height; y++) {
            int dot = orientation.dot(0, y, width, height);
            int step = width > 1 ? orientation.dot(1, y, width, height) - dot : 0;
            for (int x = 0; x < width; x++, dot += step) {
                if (grey) {
                    codes[dot] = bytes[at++];
                } else {
                    int sum = BLUE * (bytes[at] & 0xFF) + GREEN * (bytes[at + 1] & 0xFF) + RED * (bytes[at + 2] & 0xFF);
                    codes[dot] = (byte) (sum + 128 >> 8);
                    at += 3;
                }
            }
        }
    }

    /** All that is rare: colour tables, transparency, 16 bits a sample. */
    private void takeColours(BufferedImage image, byte[] codes) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            image.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                int sum = RED * (row[x] >> 16 & 0xFF) + GREEN * (row[x] >> 8 & 0xFF) + BLUE * (row[x] & 0xFF);
                codes[orientation.dot(x, y, width, height)] = (byte) (sum + 128 >> 8);
            }
        }
    }
}
