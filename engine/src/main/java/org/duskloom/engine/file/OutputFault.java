package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Words for faults of the file system: the exceptions themselves often give a path without a reason, or the reverse.
 */
final class OutputFault {
    private OutputFault() {}

    /** An exception that says what could not be done, to which file, and why. Keeps the cause. */
    static IOException of(String failed, Path file, IOException cause) {
        if (cause instanceof OutputRefusedException) {
            return cause;
        }
        return new IOException(failed + " " + file + ": " + reason(file, cause), cause);
    }

    private static String reason(Path file, IOException cause) {
        if (cause instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (cause instanceof NoSuchFileException) {
            Path folder = file.toAbsolutePath().getParent();
            return folder != null && Files.isDirectory(folder)
                    ? "no file can be made in " + folder + "; name another folder"
                    : "its folder does not exist";
        }
        if (cause instanceof FileAlreadyExistsException) {
            boolean leadsNowhere = Files.isSymbolicLink(file) && !Files.exists(file);
            return leadsNowhere ? "it is a link that leads nowhere" : "a file of that name stands in the way";
        }
        if (cause instanceof FileSystemException fault && fault.getReason() != null) {
            return fault.getReason();
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
}
