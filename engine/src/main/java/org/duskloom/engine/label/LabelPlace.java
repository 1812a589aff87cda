package org.duskloom.engine.label;

import java.util.Optional;

/**
 * Where a label stands.
 *
 * @param area what it takes
 * @param leader the line that leads to what it names, where it does not stand beside it
 */
public record LabelPlace(Area area, Optional<Leader> leader) {
    /** A line from a label to the rim of a pixel. */
    public record Leader(double fromX, double fromY, double toX, double toY) {
        double length() {
            return StrictMath.hypot(toX - fromX, toY - fromY);
        }
    }
}
