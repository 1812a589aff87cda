package org.duskloom.engine.locate.picture;

import java.util.List;
import org.duskloom.engine.color.SrgbEncoder;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.label.Area;
import org.duskloom.engine.label.LabelFinder;
import org.duskloom.engine.label.LabelPlace;
import org.duskloom.engine.label.LabelWish;
import org.duskloom.engine.label.PixelField;
import org.duskloom.engine.label.Span;
import org.duskloom.engine.locate.Located;
import org.duskloom.engine.locate.Sighting;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.preview.Raster;
import org.duskloom.engine.text.Counted;

/**
 * What was found, over the lights that the pictures show: a ring round every pixel, a line along every prop's wire in
 * a colour of its own, a square round its first pixel, and its name. Nothing of the pictures but light sources is in
 * it, unless it is given the whole picture.
 */
public final class LocatedPicture {
    private static final int WIDEST = 2400;
    private static final int NIGHT = 0x090A0F;
    private static final int TEXT = 0xDCDFE6;
    private static final int SCALE = 2;
    private static final int HEAD = 40;
    private static final int RING = 4;
    private static final int SQUARE = RING + 2;
    private static final int[] COLOURS = {0xE0704A, 0x5AA9D6, 0x7FB069, 0xD9B84A, 0xC77DBB, 0x57C0B0};

    private final Located located;
    private final PixelMap map;
    private final Raster raster;
    private final double scale;

    private LocatedPicture(Located located, PixelMap map) {
        this.located = located;
        this.map = map;
        this.scale = Math.min(1, (double) WIDEST / located.size().width());
        int width = (int) Math.max(400, StrictMath.rint(scale * located.size().width()));
        int height = (int) Math.max(1, StrictMath.rint(scale * located.size().height()));
        this.raster = new Raster(width, HEAD + height, NIGHT);
    }

    /** The column in which a place lies; a whole number is the middle of a dot. */
    private int across(double x) {
        return (int) StrictMath.floor(scale * (x + 0.5));
    }

    private int down(double y) {
        return HEAD + (int) StrictMath.floor(scale * (y + 0.5));
    }

    /** Draws it on black. */
    public static Raster draw(Located located, PixelMap map) {
        LocatedPicture picture = new LocatedPicture(located, map);
        picture.drawSpots();
        return picture.finished();
    }

    /**
     * Draws it on the whole picture.
     *
     * @param codes the picture's dots as sRGB codes, row by row
     */
    public static Raster drawOver(byte[] codes, Located located, PixelMap map) {
        LocatedPicture picture = new LocatedPicture(located, map);
        picture.drawGround(codes);
        return picture.finished();
    }

    private Raster finished() {
        drawWires();
        drawNames();
        int all = map.pixelCount();
        raster.text(located.seen().size() + " of " + Counted.of(all, "pixel") + " found", 10, 13, SCALE, TEXT);
        return raster;
    }

    /** Where several dots fall on one, the brightest is seen. */
    private void drawSpots() {
        double full = Math.max(1e-6, located.spots().usualPeak());
        located.spots().forEach((x, y, light) -> {
            int code = SrgbEncoder.code((float) Math.min(1, light / full));
            brighten(across(x), down(y), code);
        });
    }

    private void brighten(int x, int y, int code) {
        if (x < raster.width() && y < raster.height() && code > (raster.colourAt(x, y) & 0xFF)) {
            raster.dot(x, y, code * 0x010101);
        }
    }

    private void drawGround(byte[] codes) {
        int width = located.size().width();
        for (int dot = 0; dot < codes.length; dot++) {
            brighten(across(dot % width), down(dot / width), codes[dot] & 0xFF);
        }
    }

    private void drawWires() {
        List<Sighting> seen = located.seen();
        for (int i = 0; i < seen.size(); i++) {
            // A gap in the wire is a gap in the line.
            if (!isFirstOfProp(i) && seen.get(i).pixel() == seen.get(i - 1).pixel() + 1) {
                line(seen.get(i - 1), seen.get(i), colour(seen.get(i)));
            }
            if (!isFirstOfProp(i)) {
                ring(seen.get(i));
            }
        }
        // Over the rings, of which there may be many round about.
        for (int i = 0; i < seen.size(); i++) {
            if (isFirstOfProp(i)) {
                square(seen.get(i));
            }
        }
    }

    private boolean isFirstOfProp(int index) {
        List<Sighting> seen = located.seen();
        return index == 0
                || map.propIndexOf(seen.get(index - 1).pixel())
                        != map.propIndexOf(seen.get(index).pixel());
    }

    private int colour(Sighting sighting) {
        return COLOURS[map.propIndexOf(sighting.pixel()) % COLOURS.length];
    }

    private void line(Sighting from, Sighting to, int colour) {
        int x = across(from.x());
        int y = down(from.y());
        int wide = across(to.x()) - x;
        int high = down(to.y()) - y;
        int steps = Math.max(1, Math.max(Math.abs(wide), Math.abs(high)));
        for (int i = 0; i <= steps; i++) {
            raster.dot(x + wide * i / steps, y + high * i / steps, colour);
        }
    }

    private void ring(Sighting sighting) {
        for (int dy = -RING; dy <= RING; dy++) {
            for (int dx = -RING; dx <= RING; dx++) {
                int square = dx * dx + dy * dy;
                if (square >= (RING - 1) * (RING - 1) + 2 && square <= RING * RING + 1) {
                    raster.dot(across(sighting.x()) + dx, down(sighting.y()) + dy, colour(sighting));
                }
            }
        }
    }

    /** In the prop's colour, with a dark seam to either side, so that it is seen where the prop's rings are dense. */
    private void square(Sighting sighting) {
        frame(sighting, SQUARE - 1, NIGHT);
        frame(sighting, SQUARE, colour(sighting));
        frame(sighting, SQUARE + 1, NIGHT);
    }

    private void frame(Sighting sighting, int reach, int colour) {
        int x = across(sighting.x());
        int y = down(sighting.y());
        for (int along = -reach; along <= reach; along++) {
            raster.dot(x + along, y - reach, colour);
            raster.dot(x + along, y + reach, colour);
            raster.dot(x - reach, y + along, colour);
            raster.dot(x + reach, y + along, colour);
        }
    }

    private void drawNames() {
        List<Sighting> seen = located.seen();
        if (seen.isEmpty()) {
            return;
        }
        double[] x = seen.stream().mapToDouble(at -> across(at.x())).toArray();
        double[] y = seen.stream().mapToDouble(at -> down(at.y())).toArray();
        int rows = SCALE * (PixelFont.CAPITAL_ROWS + 2);
        Area room = new Area(0, HEAD, raster.width(), raster.height()).grown(-1);
        LabelFinder finder = new LabelFinder(new PixelField(x, y), RING, rows, room);
        for (int from = 0; from < seen.size(); ) {
            Prop prop = map.props().get(map.propIndexOf(seen.get(from).pixel()));
            int to = from;
            while (to < seen.size() && seen.get(to).pixel() < prop.firstPixel() + prop.pixelCount()) {
                to++;
            }
            int wide = SCALE * PixelFont.standard().width(prop.name());
            LabelWish wish = new LabelWish(new Span(from, to), wide, rows, RING + 6, 0.25);
            finder.beside(wish).or(() -> finder.ledOverNothing(wish)).ifPresent(place -> drawName(prop, place));
            from = to;
        }
    }

    private void drawName(Prop prop, LabelPlace place) {
        int colour = COLOURS[map.propIndexOf(prop.firstPixel()) % COLOURS.length];
        int left = (int) StrictMath.rint(place.area().left());
        int top = (int) StrictMath.rint(place.area().bottom());
        raster.text(prop.name(), left, top + SCALE, SCALE, colour);
        place.leader().ifPresent(leader -> {
            double wide = Math.abs(leader.toX() - leader.fromX());
            double high = Math.abs(leader.toY() - leader.fromY());
            int steps = (int) StrictMath.ceil(Math.max(1, Math.max(wide, high)));
            for (int i = 0; i <= steps; i++) {
                double share = (double) i / steps;
                raster.dot(
                        (int) StrictMath.rint(leader.fromX() + share * (leader.toX() - leader.fromX())),
                        (int) StrictMath.rint(leader.fromY() + share * (leader.toY() - leader.fromY())),
                        colour);
            }
        });
    }
}
