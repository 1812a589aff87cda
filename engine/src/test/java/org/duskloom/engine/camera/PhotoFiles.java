package org.duskloom.engine.camera;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Writes pictures as JPEG, as phones do. */
public final class PhotoFiles {
    private PhotoFiles() {}

    /**
     * A JPEG.
     *
     * @param quality from 0 to 1
     */
    public static byte[] jpeg(BufferedImage picture, double quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            ImageWriteParam parameters = writer.getDefaultWriteParam();
            parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            parameters.setCompressionQuality((float) quality);
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), parameters);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** Writes {@code photo-0001.jpg} and so on into a folder, which is made. */
    public static List<Path> write(
            TestCamera camera, Lighting lighting, List<Exposure> exposures, double quality, Path folder)
            throws IOException {
        Files.createDirectories(folder);
        List<Path> files = new ArrayList<>();
        for (BufferedImage picture : camera.pictures(lighting, exposures)) {
            String name = String.format(Locale.ROOT, "photo-%04d.jpg", files.size() + 1);
            files.add(Files.write(folder.resolve(name), jpeg(picture, quality)));
        }
        return files;
    }
}
