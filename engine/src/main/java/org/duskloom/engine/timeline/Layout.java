package org.duskloom.engine.timeline;

import java.util.Objects;
import java.util.Optional;

/**
 * How an effect is laid over the members of its cue.
 *
 * @param spread one canvas for all or one for each
 * @param axes the stage's or the prop's own
 * @param fit how the canvas is scaled
 * @param order the order along which the effect runs
 * @param stagger how the members' starts are spread; only with a canvas for each
 */
public record Layout(Spread spread, Axes axes, Fit fit, PixelOrder order, Optional<Stagger> stagger) {
    public Layout {
        Objects.requireNonNull(spread, "spread");
        Objects.requireNonNull(axes, "axes");
        Objects.requireNonNull(fit, "fit");
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(stagger, "stagger");
    }

    /** The same wherever it is written: two layouts that say the same are then equal. */
    public Layout withoutLocation() {
        return new Layout(spread, axes, fit, order, stagger.map(Stagger::withoutLocation));
    }
}
