package org.duskloom.engine.sheet;

import java.util.Locale;
import java.util.Set;
import org.duskloom.engine.label.Area;

/** Writes a drawing as SVG 1.1 (W3C), true to scale: one user unit is one millimetre. */
public final class SvgSheet {
    private final StringBuilder svg = new StringBuilder();
    private final Area area;

    private SvgSheet(Area area) {
        this.area = area;
    }

    /** The text of the file. */
    public static String of(Drawing drawing, String title) {
        return new SvgSheet(drawing.area()).write(drawing, title);
    }

    private String write(Drawing drawing, String title) {
        svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\">\n",
                number(area.width()),
                number(area.height()),
                number(area.width()),
                number(area.height())));
        svg.append("<title>").append(escaped(title)).append("</title>\n");
        svg.append("<g font-family=\"sans-serif\">\n");
        Set<Stroke> pixels = Set.copyOf(drawing.pixels());
        drawing.strokes().stream().filter(stroke -> !pixels.contains(stroke)).forEach(this::write);
        if (!drawing.pixels().isEmpty()) {
            svg.append("<g id=\"zero\" transform=\"translate(")
                    .append(x(0))
                    .append(' ')
                    .append(y(0))
                    .append(")\"/>\n");
            svg.append("<g id=\"pixels\">\n");
            drawing.pixels().forEach(this::write);
            svg.append("</g>\n");
        }
        return svg.append("</g>\n</svg>\n").toString();
    }

    private void write(Stroke stroke) {
        if (stroke instanceof Stroke.Circle circle) {
            writeCircle(circle);
        } else if (stroke instanceof Stroke.Line line) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"%s\" stroke-width=\"%s\"/>\n",
                    x(line.fromX()),
                    y(line.fromY()),
                    x(line.toX()),
                    y(line.toY()),
                    color(line.color()),
                    number(line.width())));
        } else if (stroke instanceof Stroke.Arrow arrow) {
            writeArrow(arrow);
        } else if (stroke instanceof Stroke.Text text) {
            writeText(text);
        }
    }

    private void writeCircle(Stroke.Circle circle) {
        String paint = circle.width() > 0
                ? "fill=\"none\" stroke=\"" + color(circle.color()) + "\" stroke-width=\"" + number(circle.width())
                        + "\""
                : "fill=\"" + color(circle.color()) + "\"";
        svg.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" %s/>\n",
                x(circle.x()),
                y(circle.y()),
                number(circle.radius()),
                paint));
    }

    private void writeArrow(Stroke.Arrow arrow) {
        double tipX = arrow.x() + arrow.directionX() * arrow.size() / 2;
        double tipY = arrow.y() + arrow.directionY() * arrow.size() / 2;
        double footX = arrow.x() - arrow.directionX() * arrow.size() / 2;
        double footY = arrow.y() - arrow.directionY() * arrow.size() / 2;
        double sideX = -arrow.directionY() * arrow.size() / 3;
        double sideY = arrow.directionX() * arrow.size() / 3;
        svg.append(String.format(
                Locale.ROOT,
                "<polygon points=\"%s,%s %s,%s %s,%s\" fill=\"%s\"/>\n",
                x(tipX),
                y(tipY),
                x(footX + sideX),
                y(footY + sideY),
                x(footX - sideX),
                y(footY - sideY),
                color(arrow.color())));
    }

    private void writeText(Stroke.Text text) {
        // Capitals of common fonts are a little over 0.7 of the font size high.
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%s\" y=\"%s\" font-size=\"%s\" fill=\"%s\">%s</text>\n",
                x(text.x()),
                y(text.y()),
                number(text.height() / 0.72),
                color(text.color()),
                escaped(text.words())));
    }

    private String x(double value) {
        return number(value - area.left());
    }

    /** In SVG y runs down. */
    private String y(double value) {
        return number(area.top() - value);
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.replaceAll("\\.?0+$", "");
    }

    private static String color(int color) {
        return String.format(Locale.ROOT, "#%06x", color);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
