package org.duskloom.engine.preview;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.label.LabelFinder;
import org.duskloom.engine.label.LabelPlace;
import org.duskloom.engine.label.LabelWish;
import org.duskloom.engine.label.PixelField;
import org.duskloom.engine.label.Span;

/**
 * Names of props in a panel: each beside its prop, best under it, where it covers no pixel and is nearer to its own
 * prop than to others; else away from it, with a line that leads to it; left out where a panel has no room.
 */
final class PropLabels {
    private static final int ROWS = PixelFont.CAPITAL_ROWS + 2;
    private static final int CLEAR = 3;

    /** Under a prop, in turns from the right: y runs down in a panel. */
    private static final double UNDER = 0.25;

    private final List<Label> placed = new ArrayList<>();
    private final LabelFinder finder;
    private final double clear;
    private final int panelWidth;

    /** A name, where its capitals begin, and its leader in dots of the panel. */
    record Label(String name, int left, int top, int width, Optional<LabelPlace.Leader> leader) {}

    private record Wanted(String name, LabelWish wish) {}

    PropLabels(PreviewScene scene, StageView view, double dotRadius, int panelWidth, int panelHeight) {
        this.panelWidth = panelWidth;
        this.clear = dotRadius + CLEAR;
        double[] x = Arrays.stream(scene.x()).map(view::panelX).toArray();
        double[] y = Arrays.stream(scene.y()).map(view::panelY).toArray();
        // What is rounded to whole dots stays within the panel.
        Area panel = new Area(0, 0, panelWidth, panelHeight).grown(-0.5);
        this.finder = new LabelFinder(new PixelField(x, y), dotRadius, ROWS, panel);
        List<Wanted> homeless = new ArrayList<>();
        for (PropSpan prop : scene.props()) {
            if (prop.pixelCount() > 0 && !prop.name().isEmpty()) {
                Wanted wanted = wanted(prop);
                finder.beside(wanted.wish()).ifPresentOrElse(place -> add(wanted, place), () -> homeless.add(wanted));
            }
        }
        homeless.forEach(wanted -> finder.ledOverNothing(wanted.wish()).ifPresent(place -> add(wanted, place)));
    }

    private Wanted wanted(PropSpan prop) {
        String name = PixelFont.standard().fitted(prop.name(), panelWidth - 2);
        Span span = new Span(prop.firstPixel(), prop.firstPixel() + prop.pixelCount());
        return new Wanted(name, new LabelWish(span, PixelFont.standard().width(name), ROWS, clear, UNDER));
    }

    private void add(Wanted wanted, LabelPlace place) {
        int left = (int) Math.rint(place.area().left());
        int top = (int) Math.rint(place.area().bottom());
        placed.add(new Label(wanted.name(), left, top, (int) wanted.wish().width(), place.leader()));
    }

    /** Writes the names on a panel whose upper left corner is given. */
    void draw(Raster sheet, int panelLeft, int panelTop) {
        for (Label label : placed) {
            label.leader().ifPresent(line -> drawLine(sheet, panelLeft, panelTop, line));
            sheet.text(label.name(), panelLeft + label.left(), panelTop + label.top(), 1, Ink.QUIET);
        }
    }

    private static void drawLine(Raster sheet, int panelLeft, int panelTop, LabelPlace.Leader line) {
        double acrossX = line.toX() - line.fromX();
        double acrossY = line.toY() - line.fromY();
        int steps = (int) Math.ceil(Math.max(1, Math.max(Math.abs(acrossX), Math.abs(acrossY))));
        for (int i = 0; i <= steps; i++) {
            int x = (int) Math.floor(line.fromX() + acrossX * i / steps);
            int y = (int) Math.floor(line.fromY() + acrossY * i / steps);
            sheet.dot(panelLeft + x, panelTop + y, Ink.QUIET);
        }
    }

    /** The names that found a place. */
    List<Label> placed() {
        return List.copyOf(placed);
    }
}
