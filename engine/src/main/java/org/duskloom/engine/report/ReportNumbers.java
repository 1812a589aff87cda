package org.duskloom.engine.report;

import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.text.ShortestDecimal;

/** Figures as they stand in files: no digits beyond a millionth, and the same on every system. */
final class ReportNumbers {
    private static final double FINEST = 1e6;

    private ReportNumbers() {}

    static String text(double value) {
        double rounded = Math.rint(value * FINEST) / FINEST;
        return ShortestDecimal.of(rounded == 0 ? 0 : rounded);
    }

    static JsonText.Inline json(double value) {
        return new JsonText.Inline(text(value));
    }
}
