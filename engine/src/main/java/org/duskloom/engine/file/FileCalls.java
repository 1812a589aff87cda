package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Path;
import java.util.List;

/**
 * The calls by which outputs change a disk, and those few that look at it and can fail. All of them go through here, so
 * that a test can have any of them fail, or have everything stop there.
 */
interface FileCalls {
    /** Makes a file that must not be there, to be written. */
    FileChannel create(Path file) throws IOException;

    /** Writes all that remains in the buffer. */
    void write(FileChannel channel, ByteBuffer bytes) throws IOException;

    /** Brings the bytes of a file to the disk. */
    void sync(Path file) throws IOException;

    /** Brings the names in a folder to the disk. Not every file system can. */
    void syncFolder(Path folder) throws IOException;

    /** Makes a folder that must not be there. */
    void makeFolder(Path folder) throws IOException;

    /**
     * Gives a file or a folder another name, in one step. A file of that name is replaced, a folder only if it is
     * empty.
     */
    void rename(Path from, Path to) throws IOException;

    /**
     * Gives a file a second name.
     *
     * @throws UnsupportedOperationException where there are none
     */
    void link(Path second, Path file) throws IOException;

    /** Removes a file or an empty folder that may be there. */
    void delete(Path entry) throws IOException;

    /** What stands in a folder, in no order. */
    List<Path> list(Path folder) throws IOException;

    /** The same of a folder with very many files, one after the other. */
    DirectoryStream<Path> stream(Path folder) throws IOException;

    /** Lets one file be read and written by those who may the other. */
    void copyPermissions(Path from, Path to) throws IOException;
}
