package org.duskloom.engine.report.page;

import java.util.Locale;
import org.duskloom.engine.preview.TimeLabel;

/** Figures with their units, as they stand on the page: with a dot, in every country. */
final class Figures {
    /** A figure and its unit stay on one line. */
    private static final String GAP = "\u00a0";

    private Figures() {}

    static String amps(double amps) {
        return String.format(Locale.ROOT, "%.2f" + GAP + "A", amps);
    }

    /** The model goes on below nothing; what is left then is nothing. */
    static String volts(double volts) {
        return volts < 0 ? "none" : String.format(Locale.ROOT, "%.2f" + GAP + "V", volts);
    }

    static String watts(double watts) {
        return String.format(Locale.ROOT, "%.0f" + GAP + "W", watts);
    }

    static String wattHours(double wattHours) {
        return String.format(Locale.ROOT, "%.2f" + GAP + "Wh", wattHours);
    }

    /** Little is told more closely, and hardly anything as such: neither is nothing. */
    static String percent(double share) {
        if (share > 0 && share < 0.0005) {
            return "under 0.1" + GAP + "%";
        }
        return String.format(
                Locale.ROOT, share > 0 && share < 0.1 ? "%.1f" + GAP + "%%" : "%.0f" + GAP + "%%", 100 * share);
    }

    /** Rounded down: what is said must be possible. */
    static String rate(double rate) {
        return String.format(Locale.ROOT, "%.1f", Math.floor(10 * rate) / 10);
    }

    /** When something is, or how long it takes. */
    static String time(double seconds) {
        return TimeLabel.of(seconds).replace(" ", GAP);
    }

    static String oneDigit(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
