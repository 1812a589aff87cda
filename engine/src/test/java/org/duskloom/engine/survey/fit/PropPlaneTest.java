package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;

/** A camera that is 10,000 away, 30 degrees to the right: it sees along (1/2, 0, sqrt(3)/2). */
class PropPlaneTest {
    private static final double COSINE = Math.sqrt(0.75);

    private static final Camera CAMERA = Camera.of(
            new Camera.Frame(0, 0, 0, 10_000),
            new Camera.Frame(0, 0, 0, 1),
            new double[] {COSINE, 0, -0.5, 0, 1, 0, 0.5, 0, COSINE},
            0,
            0,
            1000,
            1);

    private static Vector3d seenThrough(PropPlane plane, int pixel, double x, double y, double z) {
        double[] at = new double[2];
        CAMERA.see(x, y, z, at);
        return plane.place(pixel, at[0], at[1]);
    }

    private static PropPlane plane(String shape, String placing) {
        PixelMap map = Built.display(shape, "{\"name\": \"prop\", \"shape\": \"shape\", " + placing + "}")
                .map();
        return new PropPlane(CAMERA, map.stage(), map.props().get(0));
    }

    private static void isAt(Vector3d place, double x, double y, double z) {
        assertThat(new double[] {place.x, place.y, place.z}).containsExactly(new double[] {x, y, z}, within(1e-6));
    }

    /** Wherever a light of a flat thing is in its plane, it is seen there, whatever pixel it is. */
    @Test
    void cutsTheRayByThePlaneOfAFlatThing() {
        String ring = "\"shape\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": 500}}]}";
        PropPlane upright = plane(ring, "\"at\": [0, 1000, 300]");
        isAt(seenThrough(upright, 0, 120, 900, 300), 120, 900, 300);
        isAt(seenThrough(upright, 7, 120, 900, 300), 120, 900, 300);
        // Tilted by -60 degrees, its plane goes back by the square root of 3 for each unit up.
        PropPlane tilted = plane(ring, "\"at\": [0, 1000, 300], \"tilt\": -60");
        isAt(seenThrough(tilted, 3, 120, 1100, 300 - 100 * Math.sqrt(3)), 120, 1100, 300 - 100 * Math.sqrt(3));
    }

    /** Of a line, the plane that faces the audience most; of a single light, the one that does so. */
    @Test
    void takesThePlaneThroughALineThatFacesTheAudience() {
        String line = "\"shape\": {\"build\": [{\"line\": {\"count\": 9, \"from\": [0, 0], \"to\": [800, 400]}}]}";
        isAt(seenThrough(plane(line, "\"at\": [0, 0, 50]"), 2, 700, 100, 50), 700, 100, 50);
        PropPlane one = plane("\"shape\": {\"build\": [{\"points\": [[0, 0]]}]}", "\"at\": [5, 6, 70]");
        isAt(seenThrough(one, 0, 40, 30, 70), 40, 30, 70);
    }

    /** What is no plane, or stands edge on, keeps each pixel at its own depth. */
    @Test
    void keepsTheDepthOfWhatIsNoPlane() {
        String helix =
                "\"shape\": {\"build\": [{\"helix\": {\"count\": 40, \"radius\": 300, \"height\": 900, \"turns\": 4}}]}";
        PixelMap map = Built.display(helix, "{\"name\": \"prop\", \"shape\": \"shape\", \"at\": [0, 0, 0]}")
                .map();
        Positions stage = map.stage();
        PropPlane solid = new PropPlane(CAMERA, stage, map.props().get(0));
        for (int pixel : new int[] {0, 13, 39}) {
            double z = stage.z(pixel);
            isAt(
                    seenThrough(solid, pixel, stage.x(pixel) + 20, stage.y(pixel), z),
                    stage.x(pixel) + 20,
                    stage.y(pixel),
                    z);
        }
        String ring = "\"shape\": {\"build\": [{\"ring\": {\"count\": 12, \"radius\": 500, \"start\": 0}}]}";
        // Yawed by 120 degrees, its plane holds the direction to the camera; its first pixel is at the cosine of that.
        PropPlane edge = plane(ring, "\"at\": [0, 0, 0], \"yaw\": 120");
        isAt(seenThrough(edge, 0, -250, 0, -500 * COSINE), -250, 0, -500 * COSINE);
        isAt(seenThrough(edge, 0, -230, 10, -500 * COSINE), -230, 10, -500 * COSINE);
    }
}
