package org.duskloom.engine.sheet;

import org.duskloom.engine.text.ShortestDecimal;

/**
 * What a person may choose about sheets.
 *
 * @param holeMm diameter of the hole for a pixel, in millimetres, 1 to 200
 */
public record SheetOptions(double holeMm) {
    /** Bullet pixels are pushed into holes of 12 mm: common practice, no source. */
    public static final int USUAL_HOLE_MM = 12;

    /** @throws IllegalArgumentException if the hole is out of range */
    public SheetOptions {
        if (!(holeMm >= 1 && holeMm <= 200)) {
            throw new IllegalArgumentException("a hole of "
                    + (Double.isFinite(holeMm) ? ShortestDecimal.of(holeMm) : holeMm) + " mm; allowed: 1 to 200");
        }
    }
}
