package org.duskloom.engine.survey.fit;

import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;
import org.joml.Vector3d;

/**
 * A placement that readings start from: the one that is described, or one at the place of another prop. Points are
 * counted from its zero point. In three dimensions they are counted along axes that are tilted and yawed with the prop,
 * so that a turn about z is the {@code turn} of the display; in two dimensions along the stage's.
 */
final class Stance {
    private final PlacedProp prop;
    private final Placement placement;
    private final Dimensions dimensions;
    private final Matrix3dc stageFromFit;
    private final Matrix3dc fitFromStage;
    private final Positions plain;
    private Positions mirrored;

    Stance(PlacedProp prop, Placement placement, Dimensions dimensions) {
        this.prop = prop;
        this.placement = placement;
        this.dimensions = dimensions;
        this.stageFromFit = dimensions == Dimensions.DEEP
                ? Rotations.rotation(0, placement.tiltDegrees(), placement.yawDegrees())
                : Rotations.IDENTITY;
        this.fitFromStage = stageFromFit.transpose(new Matrix3d());
        this.plain = template(placement.mirror());
    }

    Placement placement() {
        return placement;
    }

    Matrix3dc stageFromFit() {
        return stageFromFit;
    }

    /** Where the pixels of the shape are: as drawn or mirrored back, or mirrored in x where it is drawn as it is. */
    Positions template(boolean isMirrored) {
        if (isMirrored && mirrored == null) {
            mirrored = template(placement.mirror() == Mirror.NONE ? Mirror.X : Mirror.NONE);
        }
        return isMirrored ? mirrored : plain;
    }

    /**
     * Whether the mirror image turned by 180 degrees is the one that is mirrored in y, and thus no turn: where the prop
     * is described without a mirror, and its own axes are not tilted out of those that are seen.
     */
    boolean mirrorsInY() {
        return placement.mirror() == Mirror.NONE && turnsInItsOwnPlane();
    }

    /** Whether a turn about z is the {@code turn} of the display. */
    boolean turnsInItsOwnPlane() {
        return dimensions == Dimensions.DEEP || placement.tiltDegrees() == 0 && placement.yawDegrees() == 0;
    }

    /** Measured places seen from the zero point. */
    Positions seen(Positions stage) {
        double[][] seen = new double[3][stage.size()];
        for (int i = 0; i < stage.size(); i++) {
            double z = dimensions == Dimensions.DEEP ? stage.z(i) - placement.z() : 0;
            Vector3d at = new Vector3d(stage.x(i) - placement.x(), stage.y(i) - placement.y(), z);
            fitFromStage.transform(at);
            seen[0][i] = at.x;
            seen[1][i] = at.y;
            seen[2][i] = at.z;
        }
        return new Positions(seen[0], seen[1], seen[2]);
    }

    private Positions template(Mirror mirror) {
        boolean deep = dimensions == Dimensions.DEEP;
        Placement seen = new Placement(
                mirror,
                placement.scale(),
                placement.turnDegrees(),
                deep ? 0 : placement.tiltDegrees(),
                deep ? 0 : placement.yawDegrees(),
                0,
                0,
                0);
        Positions stage = seen.stageFromOwn(prop.shape().pixels());
        double[][] byPropPixel = new double[3][stage.size()];
        for (int i = 0; i < stage.size(); i++) {
            int pixel = prop.shapePixel(i);
            byPropPixel[0][i] = stage.x(pixel);
            byPropPixel[1][i] = stage.y(pixel);
            byPropPixel[2][i] = deep ? stage.z(pixel) : 0;
        }
        return new Positions(byPropPixel[0], byPropPixel[1], byPropPixel[2]);
    }
}
