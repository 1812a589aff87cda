package org.duskloom.engine.camera;

/**
 * A camera's geometry: the straight ray through its eye, bent by the lens. With (a, b) a place on the plane at distance
 * 1 before the eye, to the right and down, the picture place is the middle of the picture plus {@code focal · (1 + k1
 * (a² + b²)) · (a, b)}. The middle of the top left picture pixel is (0, 0); x counts to the right, y down.
 */
public final class Pinhole {
    private final double[] eye;
    private final double[] right;
    private final double[] up;
    private final double[] ahead;
    private final double focal;
    private final double k1;
    private final int width;
    private final int height;

    private Pinhole(double[] eye, double[][] axes, double focal, double k1, int width, int height) {
        this.eye = eye;
        this.right = axes[0];
        this.up = axes[1];
        this.ahead = axes[2];
        this.focal = focal;
        this.k1 = k1;
        this.width = width;
        this.height = height;
    }

    /**
     * A camera that looks from one place at another.
     *
     * @param rollDegrees how far it is held askew: counter-clockwise as who holds it sees it
     * @param focal in picture pixels
     * @param k1 the lens bend; below 0 bulges
     */
    static Pinhole looking(
            double[] eye, double[] at, double rollDegrees, double focal, double k1, int width, int height) {
        double[] ahead = unit(at[0] - eye[0], at[1] - eye[1], at[2] - eye[2]);
        double[] level = unit(-ahead[2], 0, ahead[0]);
        double[] upright = cross(level, ahead);
        double cosine = Math.cos(Math.toRadians(rollDegrees));
        double sine = Math.sin(Math.toRadians(rollDegrees));
        double[] right = new double[3];
        double[] up = new double[3];
        for (int i = 0; i < 3; i++) {
            right[i] = cosine * level[i] + sine * upright[i];
            up[i] = cosine * upright[i] - sine * level[i];
        }
        return new Pinhole(eye, new double[][] {right, up, ahead}, focal, k1, width, height);
    }

    /** Where a place of the stage is seen: x and y; not numbers if it is behind the eye. */
    public double[] place(double x, double y, double z) {
        double depth = along(ahead, x, y, z);
        double a = along(right, x, y, z) / depth;
        double b = -along(up, x, y, z) / depth;
        double bent = depth > 0 ? focal * (1 + k1 * (a * a + b * b)) : Double.NaN;
        return new double[] {0.5 * (width - 1) + bent * a, 0.5 * (height - 1) + bent * b};
    }

    /** Whether a picture place lies in the picture. */
    public boolean isInside(double x, double y) {
        return x > -0.5 && y > -0.5 && x < width - 0.5 && y < height - 0.5;
    }

    public double[] eye() {
        return eye.clone();
    }

    public double focal() {
        return focal;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    private double along(double[] axis, double x, double y, double z) {
        return axis[0] * (x - eye[0]) + axis[1] * (y - eye[1]) + axis[2] * (z - eye[2]);
    }

    private static double[] unit(double x, double y, double z) {
        double length = Math.sqrt(x * x + y * y + z * z);
        return new double[] {x / length, y / length, z / length};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
