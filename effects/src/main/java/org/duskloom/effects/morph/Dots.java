package org.duskloom.effects.morph;

import org.duskloom.effects.assign.Points;

/**
 * The dots of one member, near ones close to each other: each has a place where it starts and one where it ends.
 * Immutable.
 *
 * @param grid the pixels that the dots may light
 * @param starts where each dot starts
 * @param ends where it ends
 * @param ways the way of each dot's colour, among the {@link ColorWays}
 * @param startSpacing how far pixels typically are apart where the dots start
 * @param endSpacing likewise where they end
 */
record Dots(PixelGrid grid, Points starts, Points ends, int[] ways, double startSpacing, double endSpacing) {

    /**
     * Lights the pixels round each dot.
     *
     * @param progress how far the dots have come: 0 at the start, 1 at the end; may lie beyond
     * @param size how far a dot's light reaches, in spacings of pixels
     * @param colors of all ways
     * @param found scratch, for the pixels of the grid
     * @param light is turned to the grid, and receives theirs
     */
    void shine(double progress, double size, ColorWays.Colors colors, PixelGrid.Found found, Light light) {
        double left = 1 - progress;
        double share = Math.min(1, Math.max(0, progress));
        double reach = size * (startSpacing * (1 - share) + endSpacing * share);
        for (int dot = 0; dot < ways.length; dot++) {
            double x = starts.x()[dot] * left + ends.x()[dot] * progress;
            double y = starts.y()[dot] * left + ends.y()[dot] * progress;
            double z = starts.z()[dot] * left + ends.z()[dot] * progress;
            colors.give(ways[dot], light);
            grid.shine(x, y, z, reach, found, light);
        }
    }
}
