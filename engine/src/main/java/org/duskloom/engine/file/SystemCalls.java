package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.List;
import java.util.stream.Stream;

/** The calls as the system has them. */
final class SystemCalls implements FileCalls {
    /** The JDK copies what it writes into a buffer outside the heap, as large as the piece, and keeps that. */
    private static final int PIECE_BYTES = 1 << 18;

    @Override
    public FileChannel create(Path file) throws IOException {
        return FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    @Override
    public void write(FileChannel channel, ByteBuffer bytes) throws IOException {
        int end = bytes.limit();
        while (bytes.position() < end) {
            bytes.limit(Math.min(end, bytes.position() + PIECE_BYTES));
            channel.write(bytes);
        }
        bytes.limit(end);
    }

    @Override
    public void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void syncFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        Files.createDirectory(folder);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void link(Path second, Path file) throws IOException {
        Files.createLink(second, file);
    }

    @Override
    public void delete(Path entry) throws IOException {
        Files.deleteIfExists(entry);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.toList();
        }
    }

    @Override
    public DirectoryStream<Path> stream(Path folder) throws IOException {
        return Files.newDirectoryStream(folder);
    }

    @Override
    public void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (old != null) {
            copyGroup(old, to);
            Files.setPosixFilePermissions(to, old.readAttributes().permissions());
            return;
        }
        AclFileAttributeView list = Files.getFileAttributeView(from, AclFileAttributeView.class);
        if (list != null) {
            Files.getFileAttributeView(to, AclFileAttributeView.class).setAcl(list.getAcl());
        }
    }

    /** Only who belongs to a group may give it a file; then the file stays with the group of whoever made it. */
    private static void copyGroup(PosixFileAttributeView old, Path to) {
        try {
            Files.getFileAttributeView(to, PosixFileAttributeView.class)
                    .setGroup(old.readAttributes().group());
        } catch (IOException notAMember) {
            return;
        }
    }
}
