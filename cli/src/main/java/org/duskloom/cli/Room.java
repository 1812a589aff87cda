package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputKind;
import org.duskloom.engine.frame.RunInfo;

/** Whether a disk has room for what a run writes. */
final class Room {
    private Room() {}

    /**
     * A disk that is too small is found out before the run, not after hours. What is free may change: writing can fail
     * all the same.
     *
     * @param folder whose files are begun, so that it is there
     * @throws IOException if there is too little room, or it cannot be found out how much there is
     */
    static void require(OutputFolder folder, List<OutputKind> kinds, RunInfo run) throws IOException {
        long needed = 0;
        List<Path> files = new ArrayList<>();
        for (OutputKind kind : kinds) {
            Path target = folder.path(kind.files().get(0));
            if (kind.bytes(run) > 0 && isOnDisk(target)) {
                needed = Math.addExact(needed, kind.bytes(run));
                files.add(target);
            }
        }
        if (files.isEmpty()) {
            return;
        }
        boolean one = files.size() == 1;
        require(
                files.get(0),
                needed,
                one ? files.get(0).toString() : folder.path("") + ", " + files.size() + " outputs",
                "render fewer --frames");
    }

    /**
     * The same for a single file, of which a part may be taken.
     *
     * @param file folders above it may be missing yet
     * @throws IOException if there is too little room, or it cannot be found out how much there is
     */
    static void require(Path file, long needed) throws IOException {
        if (needed > 0 && !OutputNames.isStandardOutput(file) && isOnDisk(file)) {
            require(file, needed, file.toString(), "take less of the show");
        }
    }

    private static void require(Path file, long needed, String what, String remedy) throws IOException {
        Path there = file.toAbsolutePath().getParent();
        while (!Files.exists(there)) {
            there = there.getParent();
        }
        long free = Files.getFileStore(there).getUsableSpace();
        if (free < needed) {
            throw new IOException("cannot write " + what + ": it needs " + Words.bytes(needed) + ", and "
                    + Words.bytes(free) + " are free; " + remedy + ", or somewhere else");
        }
    }

    /** A device or a pipe takes what it is given. */
    private static boolean isOnDisk(Path target) {
        return !Files.exists(target) || Files.isRegularFile(target) || Files.isDirectory(target);
    }
}
