package org.duskloom.engine.camera;

/**
 * A flat thing that reflects: a window, or wet ground. A light before it is seen a second time, as far behind it, where
 * the ray from there to the eye goes through it.
 *
 * @param middle a place on it
 * @param facing the unit vector toward the side that reflects
 * @param across the unit vector of its width
 * @param halfWidth half its width
 * @param halfHeight half its height, along what stands square to the other two
 * @param reflectance how much light it gives back, from 0 to 1
 * @param roughness how many times as far as the camera alone it smears the light up and down in the picture; 1 is
 *     smooth
 */
public record Mirror(
        double[] middle,
        double[] facing,
        double[] across,
        double halfWidth,
        double halfHeight,
        double reflectance,
        double roughness) {
    /**
     * A window.
     *
     * @param yawDegrees how far it is turned about the vertical: 0 faces the audience, 90 to its right
     */
    public static Mirror window(
            double x, double y, double z, double width, double height, double yawDegrees, double reflectance) {
        double cosine = Math.cos(Math.toRadians(yawDegrees));
        double sine = Math.sin(Math.toRadians(yawDegrees));
        return new Mirror(
                new double[] {x, y, z},
                new double[] {sine, 0, cosine},
                new double[] {cosine, 0, -sine},
                width / 2,
                height / 2,
                reflectance,
                1);
    }

    /** Wet ground, level and without end. */
    public static Mirror wetGround(double y, double reflectance) {
        return new Mirror(
                new double[] {0, y, 0},
                new double[] {0, 1, 0},
                new double[] {1, 0, 0},
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                reflectance,
                2.5);
    }

    /** Where the reflection of a light seems to stand; nothing if it is not seen from the eye. */
    double[] image(double[] light, double[] eye) {
        double before = offset(light);
        double eyeBefore = offset(eye);
        if (before <= 0 || eyeBefore <= 0) {
            return new double[0];
        }
        double[] image = new double[3];
        double[] through = new double[3];
        double share = before / (before + eyeBefore);
        for (int i = 0; i < 3; i++) {
            image[i] = light[i] - 2 * before * facing[i];
            through[i] = image[i] + share * (eye[i] - image[i]) - middle[i];
        }
        double along = through[0] * across[0] + through[1] * across[1] + through[2] * across[2];
        double square = through[0] * through[0] + through[1] * through[1] + through[2] * through[2] - along * along;
        return Math.abs(along) <= halfWidth && square <= halfHeight * halfHeight ? image : new double[0];
    }

    private double offset(double[] place) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            sum += (place[i] - middle[i]) * facing[i];
        }
        return sum;
    }
}
