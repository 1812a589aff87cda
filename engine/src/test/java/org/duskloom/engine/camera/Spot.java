package org.duskloom.engine.camera;

/**
 * Something bright in the picture, before the tripod shakes.
 *
 * @param source the pixel that lights it, or which lamp
 * @param x picture place to the right
 * @param y the same, down
 * @param strength how bright, by a light of the display
 * @param wide how many times as wide as a light it is drawn
 * @param high the same, upright
 */
record Spot(int source, double x, double y, double strength, double wide, double high) {}
