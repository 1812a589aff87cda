package org.duskloom.engine.display;

import java.util.Optional;
import java.util.Properties;
import org.duskloom.engine.geometry.Degrees;
import org.duskloom.engine.map.Positions;
import org.joml.Matrix4d;
import org.joml.Vector3d;

/**
 * A placement as a matrix; the only class that uses JOML. Sines and cosines come from {@link Degrees}, because those
 * of JOML depend on the JDK, and nothing is handed over in buffers. What is left for JOML are products and sums of
 * doubles, which are the same everywhere as long as none of its properties is set.
 */
final class PlacementMatrix {
    private static final String PROPERTY_PREFIX = "joml.";
    private static final String HARMLESS_PROPERTY = "joml.nounsafe";

    private final Matrix4d stageFromOwn;

    PlacementMatrix(Placement placement) {
        double scale = placement.scale();
        stageFromOwn = new Matrix4d()
                .translation(placement.x(), placement.y(), placement.z())
                .mul(aboutY(placement.yawDegrees()))
                .mul(aboutX(placement.tiltDegrees()))
                .mul(aboutZ(placement.turnDegrees()))
                .scale(
                        scale * placement.mirror().signX(),
                        scale * placement.mirror().signY(),
                        scale);
    }

    /** The name of a system property that would let JOML count differently, if one is set. */
    static Optional<String> alteringProperty(Properties properties) {
        return properties.stringPropertyNames().stream()
                .filter(name -> name.startsWith(PROPERTY_PREFIX) && !name.equals(HARMLESS_PROPERTY))
                .sorted()
                .findFirst();
    }

    /**
     * Places pixels.
     *
     * @param own their places in the shape's own axes
     * @param reversed whether the last one comes first
     * @param stage x, y and z of the stage
     * @param first where the first one goes in them
     */
    void place(Positions own, boolean reversed, double[][] stage, int first) {
        Vector3d point = new Vector3d();
        int last = own.size() - 1;
        for (int i = 0; i <= last; i++) {
            int pixel = reversed ? last - i : i;
            stageFromOwn.transformPosition(own.x(pixel), own.y(pixel), own.z(pixel), point);
            // Adding zero makes one of the two zeros.
            stage[0][first + i] = point.x + 0.0;
            stage[1][first + i] = point.y + 0.0;
            stage[2][first + i] = point.z + 0.0;
        }
    }

    // The constructor takes columns: what becomes of the x, the y and the z axis, then the move.

    private static Matrix4d aboutX(double degrees) {
        double s = Degrees.sine(degrees);
        double c = Degrees.cosine(degrees);
        return new Matrix4d(1, 0, 0, 0, 0, c, s, 0, 0, -s, c, 0, 0, 0, 0, 1);
    }

    private static Matrix4d aboutY(double degrees) {
        double s = Degrees.sine(degrees);
        double c = Degrees.cosine(degrees);
        return new Matrix4d(c, 0, -s, 0, 0, 1, 0, 0, s, 0, c, 0, 0, 0, 0, 1);
    }

    private static Matrix4d aboutZ(double degrees) {
        double s = Degrees.sine(degrees);
        double c = Degrees.cosine(degrees);
        return new Matrix4d(c, s, 0, 0, -s, c, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1);
    }
}
