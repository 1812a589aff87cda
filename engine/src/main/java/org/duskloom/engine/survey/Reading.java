package org.duskloom.engine.survey;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.map.Positions;

/**
 * What a prop may be in truth.
 *
 * @param changes what differs from the description; none if it is as described
 * @param placement how it stands
 * @param wiring in which order its pixels are
 * @param typicalMisfit the root of the mean squared distance of measured pixels from where this puts them
 * @param largestMisfit the largest of these distances
 * @param farthestPixel the pixel with the largest one, from 0
 */
public record Reading(
        List<Change> changes,
        Placement placement,
        Wiring wiring,
        double typicalMisfit,
        double largestMisfit,
        int farthestPixel) {
    public Reading {
        changes = List.copyOf(changes);
        Objects.requireNonNull(placement, "placement");
        Objects.requireNonNull(wiring, "wiring");
    }

    /**
     * Whether an entry of the display can say it: pixels of a prop can be wired from the other end, but in no other
     * order.
     */
    public boolean isWritable() {
        return wiring.kind() == WiringKind.AS_DESCRIBED || wiring.kind() == WiringKind.FROM_OTHER_END;
    }

    /** Where it puts all pixels of the prop, by pixel. */
    public Positions places(PlacedProp prop) {
        Positions stage = placement.stageFromOwn(prop.shape().pixels());
        double[][] byPixel = new double[3][stage.size()];
        for (int i = 0; i < stage.size(); i++) {
            int pixel = prop.shapePixel(wiring.describedPixel(i));
            byPixel[0][i] = stage.x(pixel);
            byPixel[1][i] = stage.y(pixel);
            byPixel[2][i] = stage.z(pixel);
        }
        return new Positions(byPixel[0], byPixel[1], byPixel[2]);
    }
}
