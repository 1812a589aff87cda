package org.duskloom.cli;

import java.util.Locale;
import org.duskloom.engine.preview.TimeLabel;
import org.duskloom.engine.report.Report;

/** Figures as a report tells them, with their units. */
final class Figure {
    private Figure() {}

    /** When a frame is shown. */
    static String moment(Report report, long frame) {
        return TimeLabel.of(report.secondsOf(frame));
    }

    static String amps(double amps) {
        return String.format(Locale.ROOT, "%.2f A", amps);
    }

    /** The model goes on below nothing; what is left then is nothing. */
    static String volts(double volts) {
        return volts < 0 ? "none" : String.format(Locale.ROOT, "%.2f V", volts);
    }

    static String watts(double watts) {
        return String.format(Locale.ROOT, "%.0f W", watts);
    }

    /** Hardly anything is not nothing. */
    static String percent(double share) {
        if (share > 0 && share < 0.005) {
            return "under 1 %";
        }
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /** Rounded down: what is said must be possible. */
    static String rate(double rate) {
        return String.format(Locale.ROOT, "%.1f", Math.floor(10 * rate) / 10);
    }
}
