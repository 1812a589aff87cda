package org.duskloom.engine.problem;

import java.util.Comparator;
import java.util.Objects;
import org.duskloom.engine.text.Quoted;

/**
 * A place in an input file.
 *
 * @param file the file's name as the user would type it
 * @param line line number, from 1; 0 means the file as a whole
 * @param column column in Unicode code points, from 1; 0 means the line as a whole
 */
public record Location(String file, int line, int column) implements Comparable<Location> {
    private static final Comparator<Location> FILE_ORDER = Comparator.comparing(Location::file)
            .thenComparingInt(Location::line)
            .thenComparingInt(Location::column);

    public Location {
        Objects.requireNonNull(file, "file");
    }

    /** The file as a whole, where no line can be named. */
    public static Location ofFile(String file) {
        return new Location(file, 0, 0);
    }

    @Override
    public int compareTo(Location other) {
        return FILE_ORDER.compare(this, other);
    }

    /** {@code file:line:column}, or less where less is known; what cannot be seen in the file's name is escaped. */
    @Override
    public String toString() {
        String shown = Quoted.plain(file);
        if (line == 0) {
            return shown;
        }
        return column == 0 ? shown + ":" + line : shown + ":" + line + ":" + column;
    }
}
