package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The calls of the system, of which some fail, or after one of which the process is no more. */
final class FaultyCalls implements FileCalls {
    /** What happens at the call that was chosen. */
    enum Fault {
        /** It fails, and those after it work. */
        ONCE,
        /** It and all after it fail, as when a disk is pulled out. */
        EVER_AFTER,
        /** It and all after it are never made, as when the process is killed or the power goes. */
        KILL
    }

    /** Ends the process. Not an exception that anything could recover from. */
    static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }

    private final FileCalls system = new SystemCalls();
    private final Fault fault;
    private final int number;
    private final Set<String> concerned;
    private final List<String> made = new ArrayList<>();

    /**
     * @param number which of the calls it is, from 1
     * @param concerned the calls that are counted; empty for all
     */
    FaultyCalls(Fault fault, int number, Set<String> concerned) {
        this.fault = fault;
        this.number = number;
        this.concerned = concerned;
    }

    static FaultyCalls none() {
        return new FaultyCalls(Fault.ONCE, Integer.MAX_VALUE, Set.of());
    }

    /** Whether the chosen call came. */
    synchronized boolean struck() {
        return made.size() >= number;
    }

    /** The calls so far, for the message of a test. */
    synchronized List<String> made() {
        return List.copyOf(made);
    }

    private synchronized void before(String call, Path path) throws IOException {
        if (!concerned.isEmpty() && !concerned.contains(call)) {
            return;
        }
        if (fault == Fault.KILL && struck()) {
            throw new Killed();
        }
        made.add(call + " " + (path == null ? "" : path.getParent().getFileName() + "/" + path.getFileName()));
        if (struck() && (made.size() == number || fault == Fault.EVER_AFTER)) {
            if (fault == Fault.KILL) {
                throw new Killed();
            }
            throw new IOException("Input/output error");
        }
    }

    @Override
    public FileChannel create(Path file) throws IOException {
        before("create", file);
        return system.create(file);
    }

    /** A process that ends in a write may have written half. */
    @Override
    public void write(FileChannel channel, ByteBuffer bytes) throws IOException {
        try {
            before("write", null);
        } catch (IOException | Killed stopped) {
            system.write(channel, bytes.slice(0, bytes.remaining() / 2));
            throw stopped;
        }
        system.write(channel, bytes);
    }

    /** What is not on the disk is there all the same when a test looks, so the disk is left in peace. */
    @Override
    public void sync(Path file) throws IOException {
        before("sync", file);
    }

    @Override
    public void syncFolder(Path folder) throws IOException {
        before("syncFolder", folder);
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        before("makeFolder", folder);
        system.makeFolder(folder);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        before("rename", to);
        system.rename(from, to);
    }

    @Override
    public void link(Path second, Path file) throws IOException {
        before("link", second);
        system.link(second, file);
    }

    @Override
    public void delete(Path entry) throws IOException {
        before("delete", entry);
        system.delete(entry);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        before("list", folder);
        return system.list(folder);
    }

    @Override
    public DirectoryStream<Path> stream(Path folder) throws IOException {
        before("stream", folder);
        return system.stream(folder);
    }

    @Override
    public void copyPermissions(Path from, Path to) throws IOException {
        before("copyPermissions", to);
        system.copyPermissions(from, to);
    }
}
