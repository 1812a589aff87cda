package org.duskloom.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the names of files and folders. */
final class TypedPath implements ITypeConverter<Path> {
    /** How the message begins; what comes before it in a report says nothing more. */
    static final String UNKNOWN_LETTERS = "the locale of this terminal cannot express the file name ";

    /** As a shell gives for a variable that is not set. The JDK takes it for the present folder. */
    static final String NO_NAME = "an empty text is not the name of a file or a folder";

    TypedPath() {}

    /** A name with letters that the locale does not have comes from the shell garbled. */
    @Override
    public Path convert(String text) {
        if (text.isEmpty()) {
            throw new TypeConversionException(NO_NAME + "; . is the folder in which you are");
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException garbled) {
            throw new TypeConversionException(UNKNOWN_LETTERS + "'" + text + "'; set LC_ALL=C.UTF-8 and try again");
        }
    }
}
