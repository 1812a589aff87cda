package org.duskloom.engine.sheet;

import java.util.List;
import java.util.Locale;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.map.Positions;

/** Draws the whole stage from the front: pixels as dots, the name of every prop, and an arrow along its own up. */
public final class StageSheet {
    private static final double DOT_SHARE = 0.0022;

    private final Display display;
    private final double scale;
    private final double letters;
    private final Labels labels;
    private final Drawing drawing;
    private final double dot;

    private StageSheet(Display display, double letters) {
        this.display = display;
        this.scale = display.units().millimetres();
        Area box = box(display.map().stage(), 0, display.map().pixelCount());
        double size = Math.max(1, Math.max(box.width(), box.height()));
        this.letters = letters > 0 ? letters : size / 90;
        this.dot = Math.max(size * DOT_SHARE, this.letters / 8);
        this.labels = new Labels(4 * this.letters);
        this.drawing = new Drawing(box.grown(6 * this.letters));
    }

    /**
     * Draws a stage.
     *
     * @param letterMm height of capitals in millimetres; 0 chooses one that suits the size of the stage
     */
    public static Drawing draw(Display display, double letterMm) {
        StageSheet sheet = new StageSheet(display, letterMm);
        sheet.drawPixels();
        display.props().forEach(sheet::drawTurn);
        display.props().forEach(sheet::drawName);
        sheet.drawFoot();
        return sheet.drawing;
    }

    private void drawPixels() {
        Positions stage = display.map().stage();
        List<PlacedProp> props = display.props();
        for (PlacedProp prop : props) {
            int first = prop.prop().firstPixel();
            for (int i = first; i < first + prop.prop().pixelCount(); i++) {
                int color = i == first ? SheetColors.FIRST : SheetColors.WIRE;
                drawing.add(new Stroke.Circle(
                        scale * stage.x(i), scale * stage.y(i), i == first ? 1.5 * dot : dot, 0, color));
                labels.take(Area.round(scale * stage.x(i), scale * stage.y(i), dot));
            }
        }
    }

    /** An arrow from the middle of a prop along its own up, for a prop that is not upright. */
    private void drawTurn(PlacedProp prop) {
        double degrees = prop.placement().turnDegrees();
        if (degrees == 0) {
            return;
        }
        Area box = box(prop);
        double angle = StrictMath.toRadians(degrees + 90);
        double reach = Math.max(2 * letters, 0.3 * Math.max(box.width(), box.height()));
        double x = (box.left() + box.right()) / 2;
        double y = (box.bottom() + box.top()) / 2;
        double directionX = StrictMath.cos(angle);
        double directionY = StrictMath.sin(angle);
        Stroke.Line shaft =
                new Stroke.Line(x, y, x + reach * directionX, y + reach * directionY, letters / 5, SheetColors.LAST);
        drawing.add(shaft);
        labels.takeLine(shaft);
        drawing.add(
                new Stroke.Arrow(shaft.toX(), shaft.toY(), directionX, directionY, 1.2 * letters, SheetColors.LAST));
    }

    private void drawName(PlacedProp prop) {
        Area box = box(prop);
        double x = (box.left() + box.right()) / 2;
        double y = (box.bottom() + box.top()) / 2;
        double degrees = prop.placement().turnDegrees();
        String turn = degrees == 0 ? "" : String.format(Locale.ROOT, " %s\u00B0", plain(degrees));
        String name = prop.prop().name() + turn + (prop.reversed() ? " reversed" : "");
        double clearX = box.width() / 2 + letters;
        double clearY = box.height() / 2 + letters;
        labels.place(name, x, y, letters, clearX, clearY, 0.75, SheetColors.INK).ifPresent(text -> {
            drawing.add(text);
            drawing.widen(text.area().grown(letters));
        });
    }

    private void drawFoot() {
        Area area = drawing.area();
        double foot = area.bottom() - 2 * letters;
        double left = area.left() + letters;
        Stroke.Text legend = new Stroke.Text(
                "From the front. Green: first pixel. Red arrow: a turned prop's own up.",
                left,
                foot,
                letters,
                SheetColors.QUIET);
        drawing.add(legend);
        drawing.widen(new Area(left, foot - letters, left + legend.width(), foot));
    }

    private Area box(PlacedProp prop) {
        int first = prop.prop().firstPixel();
        return box(display.map().stage(), first, first + prop.prop().pixelCount());
    }

    private Area box(Positions positions, int from, int to) {
        double x = scale * positions.x(from);
        double y = scale * positions.y(from);
        Area area = new Area(x, y, x, y);
        for (int i = from + 1; i < to; i++) {
            area = area.with(Area.round(scale * positions.x(i), scale * positions.y(i), 0));
        }
        return area;
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
