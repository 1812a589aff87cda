package org.duskloom.engine.format;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Optional;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;

/**
 * Frames that were rendered before: {@code frames.rgb} and the manifest beside it. Any frame can be had in any order,
 * straight from the file; memory does not depend on how many there are.
 */
public final class FinishedFrames implements FrameSource {
    private static final int CHECKED_AT_A_TIME = 1 << 18;

    private final ManifestReader.Located read;
    private final Path file;
    private final String shownName;

    private FinishedFrames(ManifestReader.Located read, Path file, String shownName) {
        this.read = read;
        this.file = file;
        this.shownName = shownName;
    }

    /**
     * Reads the manifest and looks whether the file has the size that it says. The bytes are not looked at: see {@link
     * #check}.
     *
     * @param folder where both stand
     * @param problems where errors go
     * @return the frames; nothing if an error was added
     */
    public static Optional<FinishedFrames> in(Path folder, Problems problems) {
        Path manifest = folder.resolve(FrameManifest.FILE);
        return SourceText.read(manifest, manifest.toString(), problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> ManifestReader.read(root, problems))
                .map(read -> new FinishedFrames(
                        read,
                        folder.resolve(RgbKind.FILE),
                        folder.resolve(RgbKind.FILE).toString()))
                .filter(frames -> frames.isListed(problems) && frames.hasItsSize(problems));
    }

    /** What is known of them. */
    public FrameManifest manifest() {
        return read.manifest();
    }

    @Override
    public RunInfo info() {
        return read.manifest().run();
    }

    /** A way to the frames for one thread, with a file of its own to read from. */
    @Override
    public FrameReader reader() throws IOException {
        return new Reader(FileChannel.open(file, StandardOpenOption.READ));
    }

    /**
     * Reads all bytes and compares their digest with that of the manifest.
     *
     * @param progress is told how many frames have been looked at
     * @return whether it is the same; if not, an error was added
     * @throws IOException if the file cannot be read
     */
    public boolean check(Problems problems, Progress progress) throws IOException {
        MessageDigest digest = DigestSink.sha256();
        ByteBuffer buffer = ByteBuffer.allocate(CHECKED_AT_A_TIME);
        long done = 0;
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            while (channel.read(buffer.clear()) > 0) {
                done += buffer.flip().remaining();
                digest.update(buffer);
                progress.at(done / info().frameBytes(), info().frames().count());
            }
        }
        String found = HexFormat.of().formatHex(digest.digest());
        if (found.equals(manifest().sha256Hex())) {
            return true;
        }
        problems.error(
                read.atDigest(),
                shownName + " is not what this was written for: its SHA-256 is " + found,
                "it was changed or belongs to another rendering; render it again");
        return false;
    }

    private boolean isListed(Problems problems) {
        if (manifest().files().stream().anyMatch(written -> written.file().equals(RgbKind.FILE))) {
            return true;
        }
        problems.error(
                read.atFiles(),
                "the frames were not written as " + RgbKind.FILE,
                "render them with rgb among what is written");
        return false;
    }

    private boolean hasItsSize(Problems problems) {
        long expected = info().frames().count() * info().frameBytes();
        try {
            if (!Files.isRegularFile(file)) {
                problems.error(
                        Location.ofFile(shownName),
                        "there is no such file, and " + FrameManifest.FILE + " beside it speaks of it",
                        "render it again");
                return false;
            }
            long found = Files.size(file);
            if (found != expected) {
                problems.error(
                        read.atFrames(),
                        shownName + " has " + found + " bytes, and "
                                + Counted.of(info().frames().count(), "frame") + " of "
                                + Counted.of(info().pixelCount(), "pixel") + " have "
                                + expected,
                        "it was cut short or belongs to another rendering; render it again");
            }
            return found == expected;
        } catch (IOException fault) {
            problems.error(Location.ofFile(shownName), "cannot be read: " + fault.getMessage());
            return false;
        }
    }

    /** Reads from the place where a frame stands. */
    private final class Reader implements FrameReader {
        private final FileChannel channel;

        Reader(FileChannel channel) {
            this.channel = channel;
        }

        @Override
        public void read(long frame, byte[] rgb, int offset) throws IOException {
            long index = frame - info().frames().first();
            if (index < 0 || index >= info().frames().count()) {
                throw new IllegalArgumentException("frame " + frame + " of " + info().frames());
            }
            ByteBuffer target = ByteBuffer.wrap(rgb, offset, info().frameBytes());
            long position = index * info().frameBytes();
            while (target.hasRemaining()) {
                int count = channel.read(target, position);
                if (count < 0) {
                    throw new EOFException(shownName + " became shorter while it was read");
                }
                position += count;
            }
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}
