package org.duskloom.engine.timeline;

import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.problem.Location;

/**
 * How an effect is laid over the members of its cue.
 *
 * @param spread one canvas for all or one for each
 * @param axes the stage's, the prop's own, or turned outward
 * @param axesLocation where the axes are written, or where they could be
 * @param fit how the canvas is scaled
 * @param order the order along which the effect runs
 * @param stagger how the members' starts are spread; only with a canvas for each
 */
public record Layout(
        Spread spread, Axes axes, Location axesLocation, Fit fit, PixelOrder order, Optional<Stagger> stagger) {
    public Layout {
        Objects.requireNonNull(spread, "spread");
        Objects.requireNonNull(axes, "axes");
        Objects.requireNonNull(axesLocation, "axesLocation");
        Objects.requireNonNull(fit, "fit");
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(stagger, "stagger");
    }

    /** The same wherever it is written: two layouts that say the same are then equal. */
    public Layout withoutLocation() {
        return new Layout(spread, axes, Location.ofFile(""), fit, order, stagger.map(Stagger::withoutLocation));
    }
}
