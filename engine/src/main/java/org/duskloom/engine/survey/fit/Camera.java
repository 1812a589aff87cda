package org.duskloom.engine.survey.fit;

import org.duskloom.engine.map.Positions;
import org.joml.Vector3d;

/**
 * How a camera sees the stage: a straight ray through its eye, bent by the lens. Immutable.
 *
 * <p>With q a place of the stage counted from the middle of the display, in the camera's axes (right, up, toward the
 * camera), and d the distance of the camera, x and y of the picture, y down, are
 *
 * <pre>
 * (a, b) = scale · (q.x + shift.x, -(q.y + shift.y)) / (1 - nearness · q.z)        nearness = 1 / d
 * (x, y) = middle + (1 + bend · (a² + b²)) · (a, b)
 * </pre>
 *
 * <p>The focal length is scale / nearness. Written so, a camera that is very far away is nothing special. Inside,
 * lengths are in units of the two frames, which both are about as large as what is seen.
 */
final class Camera {
    /** How many numbers decide a camera: three of its direction, and one each for what {@link #stepped} names. */
    static final int PARAMETERS = 10;

    /** Nothing is seen that is nearer to the eye than this share of the distance. */
    private static final double NEAREST = 0.02;

    private static final int ROUNDS_OF_BEND = 20;

    private final Frame stage;
    private final Frame picture;
    private final double[] axes;
    private final double shiftX;
    private final double shiftY;
    private final double scale;
    private final double nearness;
    private final double middleX;
    private final double middleY;
    private final double bend;

    private Camera(Frame stage, Frame picture, double[] axes, double[] numbers) {
        this.stage = stage;
        this.picture = picture;
        this.axes = axes;
        this.shiftX = numbers[0];
        this.shiftY = numbers[1];
        this.scale = numbers[2];
        this.nearness = Math.max(0, numbers[3]);
        this.middleX = numbers[4];
        this.middleY = numbers[5];
        this.bend = numbers[6];
    }

    /**
     * A camera without lens bend, whose picture's middle is that of what is measured.
     *
     * @param axes the rows of the rotation from the stage to the camera
     * @param shiftX along the camera's right axis
     * @param scale of the picture
     */
    static Camera of(
            Frame stage, Frame picture, double[] axes, double shiftX, double shiftY, double scale, double nearness) {
        return new Camera(stage, picture, axes.clone(), new double[] {shiftX, shiftY, scale, nearness, 0, 0, 0});
    }

    /**
     * One a little different: turned about its three axes (radians, while small), shifted, scaled (relative), nearer,
     * with another middle of the picture, bent more.
     */
    Camera stepped(double[] step) {
        return new Camera(stage, picture, turned(axes, step[0], step[1], step[2]), new double[] {
            shiftX + step[3],
            shiftY + step[4],
            scale * StrictMath.exp(step[5]),
            nearness + step[6],
            middleX + step[7],
            middleY + step[8],
            bend + step[9]
        });
    }

    /** The numbers that are held back if nothing else decides them: nearness, the middle of the picture, the bend. */
    double[] held() {
        return new double[] {nearness, middleX, middleY, bend};
    }

    /** Where a place of the stage is in the picture; not numbers where it is behind the camera. */
    void see(double x, double y, double z, double[] at) {
        double px = (x - stage.x()) / stage.size();
        double py = (y - stage.y()) / stage.size();
        double pz = (z - stage.z()) / stage.size();
        double depth = 1 - nearness * (axes[6] * px + axes[7] * py + axes[8] * pz);
        double share = depth > NEAREST ? scale / depth : Double.NaN;
        double a = share * (axes[0] * px + axes[1] * py + axes[2] * pz + shiftX);
        double b = -share * (axes[3] * px + axes[4] * py + axes[5] * pz + shiftY);
        double bent = 1 + bend * (a * a + b * b);
        at[0] = picture.x() + picture.size() * (middleX + bent * a);
        at[1] = picture.y() + picture.size() * (middleY + bent * b);
    }

    /**
     * The place of the stage that is seen in a place of the picture and lies in a plane.
     *
     * @param normal the plane's unit normal
     * @param on a place in the plane
     */
    Vector3d onPlane(double pictureX, double pictureY, Vector3d normal, Vector3d on) {
        double[] ab = unbent(pictureX, pictureY);
        Vector3d start = toStage(ab[0] / scale - shiftX, -ab[1] / scale - shiftY, 0);
        Vector3d ray = toStage(-ab[0] * nearness / scale, ab[1] * nearness / scale, 1);
        Vector3d from = start.mul(stage.size()).add(stage.x(), stage.y(), stage.z());
        double along = normal.dot(on.sub(from, new Vector3d())) / normal.dot(ray);
        return from.add(ray.mul(along));
    }

    /** The unit vector from a place of the stage toward the eye. */
    Vector3d towardEye(Vector3d place) {
        Vector3d counted =
                new Vector3d(place).sub(stage.x(), stage.y(), stage.z()).div(stage.size());
        double qx = axes[0] * counted.x + axes[1] * counted.y + axes[2] * counted.z;
        double qy = axes[3] * counted.x + axes[4] * counted.y + axes[5] * counted.z;
        double qz = axes[6] * counted.x + axes[7] * counted.y + axes[8] * counted.z;
        Vector3d ray = toStage(-nearness * (qx + shiftX), -nearness * (qy + shiftY), 1 - nearness * qz);
        return ray.div(Math.sqrt(ray.dot(ray)));
    }

    /** The units of the stage that a unit of the picture is, at the distance of the display's middle. */
    double unitsPerPictureUnit() {
        return stage.size() / (scale * picture.size());
    }

    /** The direction of the eye from the middle of the display: right, up, toward the audience. */
    Vector3d direction() {
        return towardEye(new Vector3d(stage.x(), stage.y(), stage.z()));
    }

    /** Where the stage's up points in the picture: to the right, and up. */
    double[] upright() {
        return new double[] {axes[1], axes[4]};
    }

    /** How far the eye is from the middle of the display; infinite where it sees along parallel rays. */
    double distance() {
        double across = Math.sqrt(shiftX * shiftX + shiftY * shiftY + 1 / (nearness * nearness));
        return stage.size() * across;
    }

    /** The focal length in units of the picture. */
    double focalLength() {
        return picture.size() * scale / nearness;
    }

    /** The lens bend k1 of the usual model, in which the focal length is 1. */
    double k1() {
        return bend * scale / nearness * (scale / nearness);
    }

    /** How well the focal length is known is how well these two are, relative to themselves. */
    double nearness() {
        return nearness;
    }

    private double[] unbent(double pictureX, double pictureY) {
        double x = (pictureX - picture.x()) / picture.size() - middleX;
        double y = (pictureY - picture.y()) / picture.size() - middleY;
        double a = x;
        double b = y;
        for (int round = 0; round < ROUNDS_OF_BEND; round++) {
            double bent = 1 + bend * (a * a + b * b);
            a = x / bent;
            b = y / bent;
        }
        return new double[] {a, b};
    }

    /** A vector of the camera's axes in those of the stage. */
    private Vector3d toStage(double right, double up, double toward) {
        return new Vector3d(
                axes[0] * right + axes[3] * up + axes[6] * toward,
                axes[1] * right + axes[4] * up + axes[7] * toward,
                axes[2] * right + axes[5] * up + axes[8] * toward);
    }

    /** Turned by a vector, twice the tangent of half the angle long: A. Cayley's formula, which stays a rotation. */
    private static double[] turned(double[] axes, double x, double y, double z) {
        double hx = x / 2;
        double hy = y / 2;
        double hz = z / 2;
        double square = hx * hx + hy * hy + hz * hz;
        double divisor = 1 + square;
        double[] turn = {
            (1 + 2 * hx * hx - square) / divisor, 2 * (hx * hy - hz) / divisor, 2 * (hx * hz + hy) / divisor,
            2 * (hx * hy + hz) / divisor, (1 + 2 * hy * hy - square) / divisor, 2 * (hy * hz - hx) / divisor,
            2 * (hx * hz - hy) / divisor, 2 * (hy * hz + hx) / divisor, (1 + 2 * hz * hz - square) / divisor
        };
        double[] product = new double[9];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                for (int k = 0; k < 3; k++) {
                    product[3 * row + column] += turn[3 * row + k] * axes[3 * k + column];
                }
            }
        }
        return product;
    }

    /**
     * A zero point and a size, so that numbers inside are near 1 whatever the units are.
     *
     * @param size the unit's length
     */
    record Frame(double x, double y, double z, double size) {
        /** The middle of the box round points, and half its diagonal. */
        static Frame round(Positions points) {
            double[] low = {points.x(0), points.y(0), points.z(0)};
            double[] high = low.clone();
            for (int i = 1; i < points.size(); i++) {
                double[] at = {points.x(i), points.y(i), points.z(i)};
                for (int axis = 0; axis < 3; axis++) {
                    low[axis] = Math.min(low[axis], at[axis]);
                    high[axis] = Math.max(high[axis], at[axis]);
                }
            }
            return new Frame(
                    (low[0] + high[0]) / 2,
                    (low[1] + high[1]) / 2,
                    (low[2] + high[2]) / 2,
                    Extent.diagonal(points) / 2);
        }
    }
}
