package org.duskloom.engine.sheet;

import java.util.List;
import java.util.Locale;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.text.Counted;

/** What stands under a shape: its name and size, a scale bar, and what the colours mean. */
final class ShapeFoot {
    private static final double BAR_MM = 100;

    /** The foot of a sheet is not to be wider than the sheet. */
    private static final int MOST_PROPS_NAMED = 5;

    private final Drawing drawing;
    private final double letters;

    private ShapeFoot(Drawing drawing, double letters) {
        this.drawing = drawing;
        this.letters = letters;
    }

    static void draw(Drawing drawing, Outline outline, double letters, PartColors colors) {
        new ShapeFoot(drawing, letters).draw(outline, colors);
    }

    private void draw(Outline outline, PartColors colors) {
        drawing.beginFoot();
        Area area = drawing.area();
        double left = area.left() + letters;
        String side = outline.view() == View.FRONT ? "from the front" : "from the back, as you wire it";
        ScaledShape scaled = outline.scaled();
        String title = scaled.shape().name() + ", scale " + scaled.scaleText() + ", " + side;
        double foot = text(title, left, area.bottom() - 2 * letters, SheetColors.INK);
        foot = text(size(outline), left, foot, SheetColors.QUIET);
        if (scaled.otherScales()) {
            foot = text(forProps(scaled.props()), left, foot, SheetColors.LAST);
        }
        foot = bar(left, foot);
        for (PartColors.Entry entry : colors.entries()) {
            drawing.add(new Stroke.Circle(left + letters / 2, foot + letters / 2, letters / 2, 0, entry.color()));
            foot = text(entry.words(), left + 2 * letters, foot, SheetColors.INK);
        }
        drawing.widen(new Area(area.left(), foot, area.right(), area.top()));
    }

    private double bar(double left, double foot) {
        double right = left + BAR_MM;
        double width = letters / 6;
        drawing.add(new Stroke.Line(left, foot, right, foot, width, SheetColors.INK));
        drawing.add(new Stroke.Line(left, foot, left, foot + letters, width, SheetColors.INK));
        drawing.add(new Stroke.Line(right, foot, right, foot + letters, width, SheetColors.INK));
        drawing.add(new Stroke.Text("100 mm", right + letters, foot, letters, SheetColors.INK));
        drawing.widen(new Area(left, foot, right + 8 * letters, foot));
        return foot - 2 * letters;
    }

    private double text(String words, double left, double foot, int color) {
        Stroke.Text text = new Stroke.Text(words, left, foot, letters, color);
        drawing.add(text);
        drawing.widen(new Area(left, foot, left + text.width() + letters, foot + letters));
        return foot - 2 * letters;
    }

    private static String forProps(List<String> props) {
        int named = props.size() <= MOST_PROPS_NAMED ? props.size() : MOST_PROPS_NAMED - 1;
        String names = String.join(", ", props.subList(0, named));
        int more = props.size() - named;
        return "for " + names + (more > 0 ? " and " + more + " more" : "") + "; other props have it at another scale";
    }

    private static String size(Outline outline) {
        return String.format(
                Locale.ROOT,
                "%s, %.0f x %.0f mm, holes %.1f mm",
                Counted.of(outline.count(), "pixel"),
                outline.box().width(),
                outline.box().height(),
                2 * outline.holeRadius());
    }
}
