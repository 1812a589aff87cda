package org.duskloom.cli;

import java.util.Locale;
import org.duskloom.engine.text.Counted;

/** Numbers as people read them. */
final class Words {
    private Words() {}

    /** {@code 0.8 s}, from a minute on {@code 1:02 min}, from an hour on {@code 1:00:00 h}. */
    static String duration(double seconds) {
        if (seconds < 59.95) {
            return String.format(Locale.ROOT, "%.1f s", seconds);
        }
        long whole = Math.round(seconds);
        if (whole < 3600) {
            return String.format(Locale.ROOT, "%d:%02d min", whole / 60, whole % 60);
        }
        return String.format(Locale.ROOT, "%d:%02d:%02d h", whole / 3600, whole / 60 % 60, whole % 60);
    }

    /** {@code 999 bytes}, {@code 14.4 MB}: powers of a thousand. */
    static String bytes(long bytes) {
        String[] units = {"kB", "MB", "GB", "TB", "PB"};
        if (bytes < 1000) {
            return Counted.of(bytes, "byte");
        }
        double size = bytes / 1000.0;
        int unit = 0;
        while (size >= 999.95 && unit < units.length - 1) {
            size /= 1000;
            unit++;
        }
        return String.format(Locale.ROOT, "%.1f %s", size, units[unit]);
    }
}
