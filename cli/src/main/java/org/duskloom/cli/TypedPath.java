package org.duskloom.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the names of files and folders. */
final class TypedPath implements ITypeConverter<Path> {
    /** How the message begins; what comes before it in a report says nothing more. */
    static final String UNKNOWN_LETTERS = "the locale of this terminal cannot express the file name ";

    TypedPath() {}

    /** A name with letters that the locale does not have comes from the shell garbled. */
    @Override
    public Path convert(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException garbled) {
            throw new TypeConversionException(UNKNOWN_LETTERS + "'" + text + "'; set LC_ALL=C.UTF-8 and try again");
        }
    }
}
