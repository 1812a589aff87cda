package org.duskloom.effects.gauge;

import java.util.Arrays;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** Paints {@link Gauge}. */
final class GaugeBrush implements Brush {
    private final SharePlane places;
    private final Edge edge;
    private final Ramp ramp;
    private final boolean byAmount;
    private float end;
    private float steepness;
    private float low;
    private float amount;

    /** @param byAmount whether all has the colour of the amount */
    GaugeBrush(SharePlane places, Edge edge, Ramp ramp, boolean byAmount) {
        this.places = places;
        this.edge = edge;
        this.ramp = ramp;
        this.byAmount = byAmount;
    }

    @Override
    public void begin(CueTime time) {
        places.begin(time);
        ramp.begin(time.seconds());
        end = edge.end(time);
        steepness = edge.steepness(time);
        low = edge.low().floatAt(time);
        amount = edge.amount().floatAt(time);
    }

    @Override
    public void paint(int firstPixel, Patch patch) {
        patch.load(places.shares(), firstPixel, patch.first);
        Edge.fill(patch.first, end, steepness, low, patch.from(), patch.to(), patch.second);
        if (byAmount) {
            Arrays.fill(patch.first, patch.from(), patch.to(), amount);
        }
        ramp.paintDimmed(patch.first, patch.second, patch);
    }
}
