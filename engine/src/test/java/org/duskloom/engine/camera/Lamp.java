package org.duskloom.engine.camera;

/**
 * A lamp that is no part of the display.
 *
 * @param place x, y, z on the stage
 * @param strength how bright, by a light of the display that is on
 * @param flickers whether each picture sees it at another brightness, from nothing to full
 */
public record Lamp(double[] place, double strength, boolean flickers) {
    /** How much wider than a light a lamp is. */
    static final double WIDTH = 3;
}
