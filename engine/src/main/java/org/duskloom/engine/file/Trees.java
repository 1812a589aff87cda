package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Removing of folders that hold only what the program wrote. */
final class Trees {
    private Trees() {}

    /**
     * Removes a file, or a folder with its files, as far as that can be done.
     *
     * @return whether nothing is left
     */
    static boolean delete(Path entry, FileCalls calls) {
        if (!Files.exists(entry, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        try {
            calls.delete(entry);
            return true;
        } catch (IOException notEmpty) {
            return Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS) && deleteFolder(entry, calls);
        }
    }

    private static boolean deleteFolder(Path folder, FileCalls calls) {
        try {
            for (Path entry : calls.list(folder)) {
                delete(entry, calls);
            }
            calls.delete(folder);
            return true;
        } catch (IOException leftBehind) {
            return false;
        }
    }
}
