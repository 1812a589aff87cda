package org.duskloom.engine.display;

import java.util.Arrays;
import org.duskloom.engine.map.PixelMap;

/**
 * Tells which pixels may be near to those of another prop at all: mostly few, so that the others need not be looked at
 * one by one. Cells are some times as wide as what counts as near, and every pixel is entered into all cells that it is
 * near to. If two pixels are near to each other, the cell of each has both props in it.
 */
final class SharedSpace {
    private static final int NEAR_PER_CELL = 8;

    /** Rounding must not leave out a pixel that is just near. */
    private static final double ROUNDING = 1.001;

    private static final int NOBODY = -1;
    private static final int SEVERAL = -2;

    private final PixelMap map;
    private final double near;
    private final double side;
    /** The prop that a cell belongs to. Cells share slots now and then, which makes them one. */
    private final int[] owners;

    /** Looks at all pixels of a map, and at what is less than {@code near} away from them, which is above 0. */
    SharedSpace(PixelMap map, double near) {
        this.map = map;
        this.near = near * ROUNDING;
        this.side = near * NEAR_PER_CELL;
        this.owners = new int[Integer.highestOneBit(map.pixelCount()) * 4];
        Arrays.fill(owners, NOBODY);
        for (int pixel = 0; pixel < map.pixelCount(); pixel++) {
            enter(pixel, map.propIndexOf(pixel));
        }
    }

    private void enter(int pixel, int prop) {
        double x = map.stage().x(pixel);
        double y = map.stage().y(pixel);
        double z = map.stage().z(pixel);
        long lastX = cell(x + near);
        long lastY = cell(y + near);
        long lastZ = cell(z + near);
        for (long cellZ = cell(z - near); cellZ <= lastZ; cellZ++) {
            for (long cellY = cell(y - near); cellY <= lastY; cellY++) {
                for (long cellX = cell(x - near); cellX <= lastX; cellX++) {
                    int slot = CellHash.of(cellX, cellY, cellZ) & owners.length - 1;
                    owners[slot] = owners[slot] == NOBODY || owners[slot] == prop ? prop : SEVERAL;
                }
            }
        }
    }

    /** Whether pixels of other props may be near to this one. */
    boolean isShared(int pixel) {
        long x = cell(map.stage().x(pixel));
        long y = cell(map.stage().y(pixel));
        long z = cell(map.stage().z(pixel));
        return owners[CellHash.of(x, y, z) & owners.length - 1] == SEVERAL;
    }

    private long cell(double coordinate) {
        return (long) Math.floor(coordinate / side);
    }
}
