package org.duskloom.engine.locate;

/**
 * How far a picture is moved against the one that is measured in: what is at (x, y) there is at (x + dx, y + dy) here.
 */
record Shift(double dx, double dy) {
    static final Shift NONE = new Shift(0, 0);
}
