package org.duskloom.engine.shard;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.file.StagedFolder;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.format.OutputRegistry;
import org.duskloom.engine.format.Seam;
import org.duskloom.engine.format.WrittenFile;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/**
 * Makes the whole of shards: the same files, byte for byte, as a single run writes. What the shards hold is compared
 * with their checksums on the way. Memory does not depend on how much it is.
 */
public final class Join implements Closeable {
    private static final int COPIED_AT_A_TIME = 1 << 20;

    private final Shards shards;
    private final OutputRegistry kinds;
    private final OutputFolder folder;
    private final Problems problems;
    private final List<WrittenFile> written = new ArrayList<>();
    private final List<Closeable> begun = new ArrayList<>();
    /** Those that are written as a whole, by their names. */
    private final Map<String, StagedFolder> folders = new LinkedHashMap<>();

    private final byte[] buffer = new byte[COPIED_AT_A_TIME];
    private String sha256Hex = "";

    /**
     * Nothing is begun yet.
     *
     * @param folder where the whole goes; closed by this
     * @param problems where errors go
     */
    public Join(Shards shards, OutputRegistry kinds, OutputFolder folder, Problems problems) {
        this.shards = shards;
        this.kinds = kinds;
        this.folder = folder;
        this.problems = problems;
    }

    /**
     * Writes all files and makes them final.
     *
     * @param progress is told of frames, as many as there are times the files that hold them
     * @return false if a shard does not hold what its manifest says: then an error was added, and nothing is final
     * @throws IOException if a file cannot be read or written; then nothing is final
     */
    public boolean run(Progress progress) throws IOException {
        int errorsBefore = problems.errorCount();
        long total = shards.whole().showFrames() * shards.files().size();
        long done = 0;
        for (String file : shards.files()) {
            join(file, kinds.seam(file).orElseThrow(), new Counter(progress, done, total));
            done += shards.whole().showFrames();
            if (problems.errorCount() > errorsBefore) {
                return false;
            }
        }
        for (StagedFolder within : folders.values()) {
            within.finish();
        }
        FrameManifest manifest = new FrameManifest(shards.whole(), sha256Hex, written, shards.origin());
        manifest.writeTo(folder.openManifest(FrameManifest.FILE));
        folder.publish();
        return true;
    }

    /** Abandons what is not final. */
    @Override
    public void close() throws IOException {
        for (Closeable output : begun) {
            output.close();
        }
        folder.close();
    }

    private void join(String name, Seam seam, Counter counter) throws IOException {
        if (seam instanceof Seam.Bodies bodies) {
            joinBodies(name, bodies, counter);
        } else if (seam instanceof Seam.Singles singles) {
            joinSingles(name, singles, counter);
        } else {
            takeOver(name);
        }
    }

    private void joinBodies(String name, Seam.Bodies bodies, Counter counter) throws IOException {
        StagedFile file = open(name, bodies);
        begun.add(file);
        byte[] header = bodies.header().apply(shards.whole());
        file.write(header, 0, header.length);
        MessageDigest whole = sha256();
        for (Shard shard : shards.shards()) {
            byte[] itsHeader = bodies.header().apply(shard.manifest().run());
            MessageDigest digest = sha256();
            copy(shard, name, itsHeader, file, bodies.plain() ? List.of(whole, digest) : List.of());
            if (bodies.plain()) {
                compare(shard, name, digest);
            }
            counter.done(shard.frames().count());
        }
        file.finish();
        if (bodies.plain()) {
            sha256Hex = hex(whole);
        }
        written.add(new WrittenFile(name, file.bytesTaken()));
    }

    private StagedFile open(String name, Seam.Bodies bodies) throws IOException {
        if (bodies.members().isEmpty()) {
            return folder.open(name);
        }
        int end = name.lastIndexOf('/') + 1;
        StagedFolder within = folders.get(name.substring(0, end));
        if (within == null) {
            within = folder.openFolder(name.substring(0, end), bodies.members().get());
            begun.add(within);
            folders.put(name.substring(0, end), within);
        }
        return within.open(name.substring(end));
    }

    private void copy(Shard shard, String name, byte[] header, StagedFile file, List<MessageDigest> digests)
            throws IOException {
        Path source = shard.path(name);
        long left = shard.bytes(name) - header.length;
        try (FileChannel channel = FileChannel.open(source, StandardOpenOption.READ)) {
            if (left < 0
                    || !Arrays.equals(
                            read(channel, header.length, source), 0, header.length, header, 0, header.length)) {
                refuse(source, "it does not begin as such a file of these frames does");
                return;
            }
            while (left > 0) {
                int count = (int) Math.min(left, buffer.length);
                read(channel, count, source);
                digests.forEach(digest -> digest.update(buffer, 0, count));
                file.write(buffer, 0, count);
                left -= count;
            }
        }
    }

    /** Fills the start of the buffer. */
    private byte[] read(FileChannel channel, int count, Path source) throws IOException {
        ByteBuffer target = ByteBuffer.wrap(buffer, 0, count);
        while (target.hasRemaining()) {
            if (channel.read(target) < 0) {
                throw new EOFException(source + " became shorter while it was read");
            }
        }
        return buffer;
    }

    private void joinSingles(String name, Seam.Singles singles, Counter counter) throws IOException {
        StagedFolder files = folder.openFolder(name, singles.members());
        begun.add(files);
        MessageDigest whole = sha256();
        long bytes = 0;
        for (Shard shard : shards.shards()) {
            MessageDigest digest = sha256();
            for (long place = 0; place < shard.frames().count(); place++) {
                String file = singles.fileName().apply(shard.frames().frame(place));
                Path source = shard.path(name).resolve(file);
                if (!Files.isRegularFile(source)) {
                    refuse(
                            source,
                            "there is no such file, and frame " + shard.frames().frame(place) + " is to be in it");
                    return;
                }
                int frameBytes = shard.manifest().run().frameBytes();
                if (Files.size(source) != frameBytes) {
                    refuse(source, "it has " + Files.size(source) + " bytes, and a frame has " + frameBytes);
                    return;
                }
                byte[] frame = Files.readAllBytes(source);
                whole.update(frame);
                digest.update(frame);
                files.write(file, frame, 0, frame.length);
                bytes += frame.length;
                counter.done(1);
            }
            compare(shard, name, digest);
        }
        files.finish();
        sha256Hex = hex(whole);
        written.add(new WrittenFile(name, bytes));
    }

    /** Such files are small, and the same in all shards. */
    private void takeOver(String name) throws IOException {
        Path first = shards.shards().get(0).path(name);
        for (Shard shard : shards.shards()) {
            if (Files.mismatch(first, shard.path(name)) >= 0) {
                refuse(shard.path(name), "it is not the same as " + first);
                return;
            }
        }
        byte[] bytes = Files.readAllBytes(first);
        StagedFile file = folder.open(name);
        begun.add(file);
        file.writeWhole(bytes);
        written.add(new WrittenFile(name, bytes.length));
    }

    private void compare(Shard shard, String name, MessageDigest digest) {
        String found = hex(digest);
        if (!found.equals(shard.manifest().sha256Hex())) {
            refuse(
                    shard.path(name),
                    "it is not what " + FrameManifest.FILE + " beside it was written for: its SHA-256 is " + found);
        }
    }

    private void refuse(Path file, String message) {
        problems.error(Location.ofFile(file.toString()), message, "it was changed; render this shard again");
    }

    private static String hex(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** Counts frames over all files. */
    private static final class Counter {
        private final Progress progress;
        private final long total;
        private long done;

        Counter(Progress progress, long done, long total) {
            this.progress = progress;
            this.done = done;
            this.total = total;
        }

        void done(long frames) {
            done += frames;
            progress.at(done, total);
        }
    }
}
