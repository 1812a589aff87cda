package org.duskloom.engine.text;

import java.util.Locale;

/** How many things there are, as people say it. */
public final class Counted {
    private Counted() {}

    /**
     * {@code 1 frame}, {@code 1920 frames}.
     *
     * @param thing the word for one of them, of which the plural ends in s
     */
    public static String of(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    /** The same with commas between thousands: {@code 1,920 frames}. */
    public static String grouped(long count, String thing) {
        return String.format(Locale.ROOT, "%,d", count)
                + of(count, thing).substring(Long.toString(count).length());
    }
}
