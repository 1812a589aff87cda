package org.duskloom.effects.morph;

import org.duskloom.effects.assign.Points;

/**
 * The dots of one member, near ones close to each other: each has a place where it starts and one where it ends.
 * Immutable.
 *
 * @param tree the pixels that the dots may light
 * @param starts where each dot starts
 * @param ends where it ends
 * @param ways the way of each dot's colour, among the {@link ColorWays}
 * @param startSpacing how far pixels typically are apart where the dots start
 * @param endSpacing likewise where they end
 */
record Dots(PixelTree tree, Points starts, Points ends, int[] ways, double startSpacing, double endSpacing) {

    /**
     * Lights the pixels round each dot.
     *
     * @param progress how far the dots have come: 0 at the start, 1 at the end; may lie beyond
     * @param size how far a dot's light reaches, in spacings of pixels
     * @param bundle an empty one
     */
    void shine(double progress, double size, Bundle bundle) {
        double left = 1 - progress;
        double share = Math.min(1, Math.max(0, progress));
        double reach = size * (startSpacing * (1 - share) + endSpacing * share);
        for (int dot = 0; dot < ways.length; dot++) {
            double x = starts.x()[dot] * left + ends.x()[dot] * progress;
            double y = starts.y()[dot] * left + ends.y()[dot] * progress;
            double z = starts.z()[dot] * left + ends.z()[dot] * progress;
            bundle.add(x, y, z, ways[dot]);
            if (bundle.isFull() || dot == ways.length - 1) {
                bundle.shine(tree, reach);
            }
        }
    }
}
