package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.label.Area;

/** A sheet: strokes in the order of drawing, within an area in millimetres, x to the right and y up. */
public final class Drawing {
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Stroke.Circle> pixels = new ArrayList<>();
    private Area area;
    private double bodyBottom;

    Drawing(Area area) {
        this.area = area;
        this.bodyBottom = area.bottom();
    }

    /** Adds a stroke over those before. */
    void add(Stroke stroke) {
        strokes.add(stroke);
    }

    /** Adds the rim of the hole of the next pixel: by these the drawing can be read again as a shape. */
    void addPixel(Stroke.Circle rim) {
        strokes.add(rim);
        pixels.add(rim);
    }

    /** Widens the area so that it holds another. */
    void widen(Area other) {
        area = area.with(other);
    }

    Area area() {
        return area;
    }

    /** Says that what follows stands under what is drawn, and explains it. */
    void beginFoot() {
        bodyBottom = area.bottom();
    }

    /** Where what is drawn ends and its foot begins. */
    double bodyBottom() {
        return bodyBottom;
    }

    List<Stroke> strokes() {
        return List.copyOf(strokes);
    }

    /** The rims of pixels in wiring order; none on a sheet that is not of one shape. */
    List<Stroke.Circle> pixels() {
        return List.copyOf(pixels);
    }

    /** Its width in millimetres. */
    public double widthMm() {
        return area.width();
    }

    /** Its height in millimetres. */
    public double heightMm() {
        return area.height();
    }
}
