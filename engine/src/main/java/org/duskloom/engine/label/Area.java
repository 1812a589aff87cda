package org.duskloom.engine.label;

/** A rectangle, in any unit; {@code bottom} is the lesser of its two y. */
public record Area(double left, double bottom, double right, double top) {
    /** Whether the two have any inner point in common. */
    public boolean meets(Area other) {
        return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
    }

    /** Whether all of another is in this one. */
    public boolean holds(Area other) {
        return left <= other.left && other.right <= right && bottom <= other.bottom && other.top <= top;
    }

    /** The area with a margin round it. */
    public Area grown(double margin) {
        return new Area(left - margin, bottom - margin, right + margin, top + margin);
    }

    /** The smallest area that holds both. */
    public Area with(Area other) {
        return new Area(
                Math.min(left, other.left),
                Math.min(bottom, other.bottom),
                Math.max(right, other.right),
                Math.max(top, other.top));
    }

    /** The distance of a point from it; 0 inside. */
    public double distanceTo(double x, double y) {
        return StrictMath.hypot(x - nearestX(x), y - nearestY(y));
    }

    /** x of its point that is nearest to one with that x. */
    double nearestX(double x) {
        return Math.max(left, Math.min(right, x));
    }

    /** y of its point that is nearest to one with that y. */
    double nearestY(double y) {
        return Math.max(bottom, Math.min(top, y));
    }

    /** x of its middle. */
    public double centreX() {
        return (left + right) / 2;
    }

    /** y of its middle. */
    public double centreY() {
        return (bottom + top) / 2;
    }

    /** From left to right. */
    public double width() {
        return right - left;
    }

    /** From bottom to top. */
    public double height() {
        return top - bottom;
    }

    /** The square round a circle. */
    public static Area round(double x, double y, double radius) {
        return around(x, y, 2 * radius, 2 * radius);
    }

    /** An area of a size round its middle. */
    public static Area around(double centreX, double centreY, double width, double height) {
        return new Area(centreX - width / 2, centreY - height / 2, centreX + width / 2, centreY + height / 2);
    }
}
