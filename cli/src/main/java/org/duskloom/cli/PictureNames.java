package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.locate.PicturesRefusedException;

/** Which files pictures are read from. */
final class PictureNames {
    private PictureNames() {}

    /** The files that are named, and those in the folders that are named. */
    static List<Path> files(List<Path> named) throws IOException, PicturesRefusedException {
        List<Path> files = new ArrayList<>();
        for (Path name : named) {
            if (Files.isDirectory(name)) {
                files.addAll(inside(name));
            } else if (Files.isRegularFile(name)) {
                files.add(name);
            } else {
                throw new PicturesRefusedException(
                        name.toString(), "is no file", "name pictures, or a folder that holds them");
            }
        }
        return files;
    }

    /** Hidden files are what systems leave in folders. */
    private static List<Path> inside(Path folder) throws IOException, PicturesRefusedException {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> files = all.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith("."))
                    .toList();
            if (files.isEmpty()) {
                throw new PicturesRefusedException(
                        folder.toString(), "holds no file", "name pictures, or their folder");
            }
            return files;
        }
    }
}
