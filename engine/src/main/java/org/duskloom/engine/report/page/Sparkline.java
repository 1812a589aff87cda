package org.duskloom.engine.report.page;

import java.util.Locale;

/** A small curve in a row of many: as high as the light is. */
final class Sparkline {
    private static final int HEIGHT = 24;

    private Sparkline() {}

    static void draw(Html html, double[] values, double most, String told) {
        StringBuilder path = new StringBuilder("M0 " + HEIGHT);
        for (int i = 0; i < values.length; i++) {
            double y = most > 0 ? HEIGHT * (1 - values[i] / most) : HEIGHT;
            path.append(String.format(Locale.ROOT, "V%.1fH%d", y, i + 1));
        }
        path.append("V").append(HEIGHT).append("Z");
        html.raw("<svg viewBox=\"0 0 " + Math.max(1, values.length) + " " + HEIGHT
                + "\" preserveAspectRatio=\"none\" role=\"img\" aria-label=\"" + Html.escaped(told)
                + "\"><path class=\"light\" d=\"" + path + "\"/></svg>");
    }
}
