package org.duskloom.engine.preview;

import java.util.Locale;

/** Times as people read them: {@code 12.5 s}, from a minute on {@code 1:02.5}. To the millisecond. */
public final class TimeLabel {
    private TimeLabel() {}

    /** The label of an instant, 0 or later. */
    public static String of(double seconds) {
        long millis = Math.round(seconds * 1000);
        if (millis < 60_000) {
            return millis / 1000 + decimals(millis) + " s";
        }
        String clock = String.format(Locale.ROOT, "%d:%02d", millis / 60_000, millis / 1000 % 60);
        return clock + decimals(millis);
    }

    private static String decimals(long millis) {
        if (millis % 1000 == 0) {
            return "";
        }
        String digits = String.format(Locale.ROOT, ".%03d", millis % 1000);
        int end = digits.length();
        while (digits.charAt(end - 1) == '0') {
            end--;
        }
        return digits.substring(0, end);
    }
}
