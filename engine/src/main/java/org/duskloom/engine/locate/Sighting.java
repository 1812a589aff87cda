package org.duskloom.engine.locate;

/**
 * A pixel that was found.
 *
 * @param pixel by wiring order, from 0
 * @param x its place in the lit picture as it stands upright: to the right, 0 is the middle of the leftmost dots
 * @param y the same, down
 * @param sure how clear its least clear bit was, by its usual one: from 0 to 1
 */
public record Sighting(int pixel, double x, double y, double sure) {}
