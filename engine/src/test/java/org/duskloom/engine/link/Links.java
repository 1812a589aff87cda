package org.duskloom.engine.link;

import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Links, for tests that need some. Where none can be made, the test is skipped and says why: some drives have none, and
 * on Windows it takes a right that few have.
 */
public final class Links {
    private Links() {}

    @FunctionalInterface
    private interface Maker {
        Path make() throws IOException;
    }

    /** A link by name, to what need not be there. */
    public static Path symbolic(Path link, Path target) throws IOException {
        return made(link, () -> Files.createSymbolicLink(link, target));
    }

    /** Another name of a file. */
    public static Path hard(Path link, Path target) throws IOException {
        return made(link, () -> Files.createLink(link, target));
    }

    private static Path made(Path link, Maker maker) throws IOException {
        try {
            return maker.make();
        } catch (FileAlreadyExistsException | NoSuchFileException slip) {
            // Of the test, which is to fail.
            throw slip;
        } catch (UnsupportedOperationException | FileSystemException refused) {
            return abort("SKIPPED: no link can be made at " + link + ": " + refused);
        }
    }
}
