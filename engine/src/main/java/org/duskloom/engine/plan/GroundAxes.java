package org.duskloom.engine.plan;

import org.duskloom.engine.map.Positions;

/**
 * Along what the places on a ground are measured: given positions, turned about the axis toward the audience.
 *
 * @param positions by global pixel index
 * @param rightX where right points along x of the positions; with {@code rightY} of length 1
 * @param rightY where right points along y of the positions
 */
record GroundAxes(Positions positions, double rightX, double rightY) {
    /** Those of the positions themselves. */
    static GroundAxes of(Positions positions) {
        return new GroundAxes(positions, 1, 0);
    }

    double x(int pixel) {
        return positions.x(pixel) * rightX + positions.y(pixel) * rightY;
    }

    double y(int pixel) {
        return positions.y(pixel) * rightX - positions.x(pixel) * rightY;
    }

    double z(int pixel) {
        return positions.z(pixel);
    }
}
