package org.duskloom.engine.locate;

/** Connected dots that say the same number: a light, or what mirrors it. */
final class Blob {
    final int pixel;
    /** The place of its middle, in dots of the lit picture. */
    double x;

    double y;
    /** All its light, above what its surroundings give. */
    double flux;
    /** How sure its least sure bit is where it is brightest, 0 to 1. */
    double sure;
    /** How far its light spreads: the root of its mean squared distance from the middle, in one direction. */
    double spread;

    boolean burnt;

    Blob(int pixel) {
        this.pixel = pixel;
    }

    double distanceTo(Blob other) {
        return Math.sqrt((x - other.x) * (x - other.x) + (y - other.y) * (y - other.y));
    }
}
