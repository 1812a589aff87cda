package org.duskloom.engine.report;

import java.util.Objects;
import org.duskloom.engine.time.FrameRate;

/**
 * What a report is about.
 *
 * @param title of the show
 * @param rate frames per second
 * @param frameCount how many frames were looked at
 * @param pixelCount how many pixels a frame has
 * @param copperCelsius how warm the copper of the wires is taken to be
 * @param everythingOn whether the figures are not those of the show, but of every colour of every pixel full on
 */
public record ReportSubject(
        String title, FrameRate rate, long frameCount, int pixelCount, double copperCelsius, boolean everythingOn) {
    public ReportSubject {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(rate, "rate");
    }

    /** How long the show is. */
    public double seconds() {
        return rate.secondsOf(frameCount);
    }
}
