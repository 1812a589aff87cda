package org.duskloom.engine.sheet;

/** A rectangle on a sheet, in millimetres. */
record Area(double left, double bottom, double right, double top) {
    /** Whether the two have any inner point in common. */
    boolean meets(Area other) {
        return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
    }

    /** The area with a margin round it. */
    Area grown(double margin) {
        return new Area(left - margin, bottom - margin, right + margin, top + margin);
    }

    /** The smallest area that holds both. */
    Area with(Area other) {
        return new Area(
                Math.min(left, other.left),
                Math.min(bottom, other.bottom),
                Math.max(right, other.right),
                Math.max(top, other.top));
    }

    double width() {
        return right - left;
    }

    double height() {
        return top - bottom;
    }

    static Area round(double x, double y, double radius) {
        return new Area(x - radius, y - radius, x + radius, y + radius);
    }
}
