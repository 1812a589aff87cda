package org.duskloom.engine.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A curve over a line, with limits drawn across: one value for each of equal steps from left to right. The values are
 * drawn as steps, so nothing is made up between them.
 */
final class Plot {
    private static final int WIDTH = 600;
    private static final int HEIGHT = 100;

    /** What a label takes of the height on paper, where a plot is lowest, with a gap: see {@link PageStyle}. */
    private static final double LABEL_HEIGHT = 10;

    private final double[] values;
    private final double low;
    private final double high;
    private final List<Limit> limits = new ArrayList<>();
    private final List<Double> marks = new ArrayList<>();

    private record Limit(double value, String label, boolean hard) {}

    /**
     * A curve.
     *
     * @param low what the lower edge stands for
     * @param high what the upper edge stands for, above that
     */
    Plot(double[] values, double low, double high) {
        this.values = values.clone();
        this.low = low;
        this.high = high > low ? high : low + 1;
    }

    /**
     * A line across.
     *
     * @param hard whether it is drawn through, not dashed
     */
    Plot limit(double value, String label, boolean hard) {
        limits.add(new Limit(value, label, hard));
        return this;
    }

    /** A tick at the lower edge. @param place 0 to 1 from left to right */
    Plot mark(double place) {
        marks.add(place);
        return this;
    }

    /**
     * Draws it.
     *
     * @param told what it shows, in a sentence, for those who do not see it
     * @param left what stands under its left end
     * @param right what stands under its right end
     */
    void draw(Html html, String told, String lowLabel, String highLabel, String left, String right) {
        html.raw("<div class=\"plot\"><svg viewBox=\"0 0 " + WIDTH + " " + HEIGHT
                + "\" preserveAspectRatio=\"none\" role=\"img\" aria-label=\"" + Html.escaped(told) + "\">\n");
        html.raw("<path class=\"area\" d=\"" + area() + "\"/>\n");
        html.raw("<path class=\"curve\" d=\"" + steps() + "\"/>\n");
        for (Limit limit : limits) {
            String y = number(y(limit.value));
            html.raw("<line class=\"" + (limit.hard ? "hard" : "soft") + "\" x1=\"0\" x2=\"" + WIDTH + "\" y1=\"" + y
                    + "\" y2=\"" + y + "\"/>\n");
        }
        for (double mark : marks) {
            String x = number(WIDTH * mark);
            html.raw("<line class=\"tick\" x1=\"" + x + "\" x2=\"" + x + "\" y1=\"" + (HEIGHT - 12) + "\" y2=\""
                    + HEIGHT + "\"/>\n");
        }
        html.raw("</svg>\n");
        html.element("span class=\"y\" style=\"top:0\"", highLabel);
        html.element("span class=\"y low\"", lowLabel);
        labels(html);
        html.raw("</div><div class=\"x\">")
                .element("span", left)
                .element("span", right)
                .raw("</div>\n");
    }

    /** Each label stands on its line; where lines are close to each other or to the upper edge, one below the other. */
    private void labels(Html html) {
        List<Limit> fromTop = limits.stream()
                .sorted(Comparator.comparingDouble(limit -> y(limit.value)))
                .toList();
        double[] bottoms = fromTop.stream().mapToDouble(limit -> y(limit.value)).toArray();
        for (int i = bottoms.length - 2; i >= 0; i--) {
            bottoms[i] = Math.min(bottoms[i], bottoms[i + 1] - LABEL_HEIGHT);
        }
        for (int i = 0; i < bottoms.length; i++) {
            double least = LABEL_HEIGHT + (i == 0 ? 0 : bottoms[i - 1]);
            bottoms[i] = Math.max(bottoms[i], least);
            html.element("span class=\"limit\" style=\"top:" + number(bottoms[i]) + "%\"", fromTop.get(i).label);
        }
    }

    private String steps() {
        StringBuilder path = new StringBuilder();
        double before = Double.NaN;
        for (int i = 0; i < values.length; i++) {
            double y = y(values[i]);
            if (i == 0) {
                path.append("M0 ").append(number(y));
            } else if (y != before) {
                path.append('H').append(number(x(i))).append('V').append(number(y));
            }
            before = y;
        }
        return path.append('H').append(WIDTH).toString();
    }

    private String area() {
        return steps() + "V" + HEIGHT + "H0Z";
    }

    private double x(int index) {
        return (double) WIDTH * index / values.length;
    }

    private double y(double value) {
        return HEIGHT * (1 - Math.max(0, Math.min(1, (value - low) / (high - low))));
    }

    /** With a dot, in every country. */
    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
    }
}
