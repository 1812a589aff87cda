package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.label.LabelFinder;
import org.duskloom.engine.label.LabelPlace;
import org.duskloom.engine.label.LabelWish;
import org.duskloom.engine.label.PixelField;
import org.duskloom.engine.label.Span;
import org.duskloom.engine.map.Positions;

/**
 * Draws the whole stage from the front or from behind: a grid in the unit of the display, pixels as dots, the name of
 * every prop and how it is mounted, and an arrow along its own up where that is not the stage's. Where the display has
 * ports, the way of each data line from prop to prop, and what hangs on it.
 */
public final class StageSheet {
    private static final double DOT_SHARE = 0.0022;
    private static final double LONGEST_SIDE = 2800;
    private static final double MOST_DOTS_PER_MM = 2;
    private static final int LETTER_DOTS = 2 * PixelFont.CAPITAL_ROWS;

    /** Letters of a stage of that many times their height are easy to read. */
    private static final double SIDE_IN_LETTERS = 90;

    /**
     * What is seen of an arrow that points at the audience is shorter than this: it is drawn as its tip or its tail.
     */
    private static final double SHORTEST_SEEN = 0.15;

    private final Display display;
    private final View view;
    private final double letters;
    private final PixelField field;
    private final LabelFinder labels;
    private final Drawing drawing;
    private final double dot;
    private final List<DataWay> ways;
    private final StageGrid grid;

    private StageSheet(Display display, View view, PixelField field, double letters) {
        this.display = display;
        this.view = view;
        this.field = field;
        this.letters = letters;
        this.dot = Math.max(longerSide(field) * DOT_SHARE, letters / 8);
        this.labels = new LabelFinder(field, 1.5 * dot, letters);
        this.drawing = new Drawing(field.box().grown(3 * letters));
        this.ways = DataWay.of(display);
        this.grid = StageGrid.of(longerSide(field), display.units().millimetres());
    }

    /** Draws a stage for printing, seen from the front. */
    public static Drawing draw(Display display) {
        return draw(display, View.FRONT);
    }

    /** Draws a stage for printing. */
    public static Drawing draw(Display display, View view) {
        PixelField field = field(display, view);
        return new StageSheet(display, view, field, longerSide(field) / SIDE_IN_LETTERS).draw();
    }

    /** Draws a stage for looking at it, seen from the front. */
    public static SheetPicture picture(Display display) {
        return picture(display, View.FRONT);
    }

    /** Draws a stage for looking at it. */
    public static SheetPicture picture(Display display, View view) {
        PixelField field = field(display, view);
        double dotsPerMm = Math.min(MOST_DOTS_PER_MM, LONGEST_SIDE / longerSide(field));
        return new SheetPicture(new StageSheet(display, view, field, LETTER_DOTS / dotsPerMm).draw(), dotsPerMm);
    }

    private static PixelField field(Display display, View view) {
        Positions stage = display.map().stage();
        double scale = display.units().millimetres();
        double[] x = new double[stage.size()];
        double[] y = new double[stage.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = view.sign() * scale * stage.x(i);
            y[i] = scale * stage.y(i);
        }
        return new PixelField(x, y);
    }

    private static double longerSide(PixelField field) {
        return Math.max(1, Math.max(field.box().width(), field.box().height()));
    }

    private Drawing draw() {
        drawGrid();
        display.props().forEach(this::drawPixels);
        for (int i = 0; i < ways.size(); i++) {
            drawWay(ways.get(i), SheetColors.part(i));
        }
        display.props().forEach(prop -> drawUp(span(prop), Mounting.of(prop)));
        List<PlacedProp> homeless = new ArrayList<>();
        for (PlacedProp prop : display.props()) {
            String words = Mounting.of(prop).words();
            labels.beside(wish(prop, words)).ifPresentOrElse(place -> drawName(words, place), () -> homeless.add(prop));
        }
        for (PlacedProp prop : homeless) {
            String words = Mounting.of(prop).words();
            labels.led(wish(prop, words)).ifPresent(place -> drawName(words, place));
        }
        drawFoot();
        return drawing;
    }

    /** Lines at round coordinates under everything else, and the coordinates below and to the left. */
    private void drawGrid() {
        Area area = StageGrid.around(field.box(), letters);
        for (StageGrid.Tick tick : grid.between(
                view.sign() > 0 ? area.left() : -area.right(), view.sign() > 0 ? area.right() : -area.left())) {
            double x = view.sign() * tick.place();
            drawing.add(new Stroke.Line(x, area.bottom(), x, area.top(), letters / 16, SheetColors.GRID));
            drawCoordinate(
                    tick.words(), x - Stroke.Text.width(tick.words(), letters) / 2, area.bottom() - 1.5 * letters);
        }
        for (StageGrid.Tick tick : grid.between(area.bottom(), area.top())) {
            double y = tick.place();
            drawing.add(new Stroke.Line(area.left(), y, area.right(), y, letters / 16, SheetColors.GRID));
            double width = Stroke.Text.width(tick.words(), letters);
            drawCoordinate(tick.words(), area.left() - width - letters / 2, y - letters / 2);
        }
    }

    private void drawCoordinate(String words, double left, double bottom) {
        drawing.add(new Stroke.Text(words, left, bottom, letters, SheetColors.COORDINATE));
        Area area = new Area(left, bottom, left + Stroke.Text.width(words, letters), bottom + letters);
        // The tails of a y or a comma hang below a label.
        labels.take(area.grown(letters / 2));
        drawing.widen(area.grown(letters / 2));
    }

    private void drawPixels(PlacedProp prop) {
        Span span = span(prop);
        for (int i = span.from(); i < span.toExclusive(); i++) {
            boolean first = i == span.from();
            int color = first ? SheetColors.FIRST : SheetColors.WIRE;
            drawing.add(new Stroke.Circle(field.x(i), field.y(i), first ? 1.5 * dot : dot, 0, color));
        }
    }

    /** A ring round the first pixel of a port, and a line with an arrow in its middle for each hop of its data. */
    private void drawWay(DataWay way, int color) {
        int first = way.firstPixel();
        if (first >= 0) {
            drawing.add(new Stroke.Circle(field.x(first), field.y(first), 3 * dot, letters / 7, color));
            labels.take(Area.round(field.x(first), field.y(first), 3 * dot));
        }
        for (DataWay.Hop hop : way.hops()) {
            double fromX = field.x(hop.fromPixel());
            double fromY = field.y(hop.fromPixel());
            double x = field.x(hop.toPixel()) - fromX;
            double y = field.y(hop.toPixel()) - fromY;
            double length = Math.sqrt(x * x + y * y);
            drawing.add(new Stroke.Line(fromX, fromY, fromX + x, fromY + y, letters / 7, color));
            labels.takeLine(fromX, fromY, fromX + x, fromY + y);
            if (length > letters) {
                drawing.add(
                        new Stroke.Arrow(fromX + x / 2, fromY + y / 2, x / length, y / length, 0.9 * letters, color));
            }
        }
    }

    private static Span span(PlacedProp prop) {
        int first = prop.prop().firstPixel();
        return new Span(first, first + prop.prop().pixelCount());
    }

    /** An arrow from the middle of a prop along its own up, as long as it is seen. */
    private void drawUp(Span span, Mounting mounting) {
        if (mounting.isUpright()) {
            return;
        }
        Area box = field.boxOf(span);
        double x = box.centreX();
        double y = box.centreY();
        if (mounting.seen() < SHORTEST_SEEN) {
            drawTowardAudience(x, y, view.sign() * mounting.upZ() > 0);
            return;
        }
        double directionX = view.sign() * mounting.upX() / mounting.seen();
        double directionY = mounting.upY() / mounting.seen();
        double reach = Math.max(2 * letters, 0.3 * mounting.seen() * Math.max(box.width(), box.height()));
        Stroke.Line shaft =
                new Stroke.Line(x, y, x + reach * directionX, y + reach * directionY, letters / 5, SheetColors.LAST);
        drawing.add(shaft);
        labels.takeLine(x, y, shaft.toX(), shaft.toY());
        drawing.add(
                new Stroke.Arrow(shaft.toX(), shaft.toY(), directionX, directionY, 1.2 * letters, SheetColors.LAST));
        labels.take(Area.round(shaft.toX(), shaft.toY(), 0.6 * letters));
    }

    /** The tip of an arrow that comes toward the audience, or the feathers of one that goes away from it. */
    private void drawTowardAudience(double x, double y, boolean comes) {
        double radius = 0.8 * letters;
        drawing.add(new Stroke.Circle(x, y, radius, letters / 5, SheetColors.LAST));
        if (comes) {
            drawing.add(new Stroke.Circle(x, y, radius / 3, 0, SheetColors.LAST));
        } else {
            double half = 0.7 * radius;
            drawing.add(new Stroke.Line(x - half, y - half, x + half, y + half, letters / 5, SheetColors.LAST));
            drawing.add(new Stroke.Line(x - half, y + half, x + half, y - half, letters / 5, SheetColors.LAST));
        }
        labels.take(Area.round(x, y, radius));
    }

    private LabelWish wish(PlacedProp prop, String words) {
        return new LabelWish(span(prop), Stroke.Text.width(words, letters), letters, 1.5 * dot + letters / 2, 0.75);
    }

    private void drawName(String words, LabelPlace place) {
        place.leader().ifPresent(line -> drawing.add(Stroke.Line.of(line, letters / 14, SheetColors.QUIET)));
        Area area = place.area();
        drawing.add(new Stroke.Text(words, area.left(), area.bottom(), letters, SheetColors.INK));
        drawing.widen(area.grown(letters));
    }

    private void drawFoot() {
        Area area = drawing.area();
        double left = area.left() + letters;
        double foot = area.bottom() - 2 * letters;
        List<String> lines = new ArrayList<>(List.of(
                (view == View.FRONT ? "From the front." : "From behind: left and right change places.")
                        + " Green: first pixel.",
                "Grid: every " + grid.stepText() + " " + display.units().word()
                        + "; x to the audience's right, y up."));
        List<Mounting> leaning = display.props().stream()
                .map(Mounting::of)
                .filter(mounting -> !mounting.isUpright())
                .toList();
        if (leaning.stream().anyMatch(mounting -> mounting.seen() >= SHORTEST_SEEN)) {
            lines.add("Red arrow: own up of a prop that does not stand upright.");
        }
        if (leaning.stream().anyMatch(mounting -> mounting.seen() < SHORTEST_SEEN)) {
            lines.add("Red ring with a dot: own up comes toward you; with a cross: it goes away from you.");
        }
        if (!ways.isEmpty()) {
            lines.add(
                    "Lines of a colour: the way of a port's data, from the ringed pixel on, straight from prop to prop.");
        }
        for (String line : lines) {
            drawFootLine(line, left, foot, SheetColors.QUIET);
            foot -= 2 * letters;
        }
        for (int i = 0; i < ways.size(); i++) {
            double middle = foot + letters / 2;
            drawing.add(new Stroke.Line(left, middle, left + 2 * letters, middle, letters / 3, SheetColors.part(i)));
            for (String line : ways.get(i).words()) {
                drawFootLine(line, left + 3 * letters, foot, SheetColors.INK);
                foot -= 2 * letters;
            }
        }
    }

    private void drawFootLine(String line, double left, double foot, int color) {
        Stroke.Text legend = new Stroke.Text(line, left, foot, letters, color);
        drawing.add(legend);
        drawing.widen(new Area(left, foot - letters, left + legend.width(), foot));
    }
}
