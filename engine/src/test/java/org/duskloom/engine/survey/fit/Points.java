package org.duskloom.engine.survey.fit;

import java.util.Random;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.joml.Matrix3d;
import org.joml.Matrix3dc;

/** Point sets for tests. */
final class Points {
    private Points() {}

    /** Points in the plane, x and y in turn. */
    static Positions flat(double... xy) {
        double[][] columns = new double[3][xy.length / 2];
        for (int i = 0; i < xy.length; i++) {
            columns[i % 2][i / 2] = xy[i];
        }
        return new Positions(columns[0], columns[1], columns[2]);
    }

    /** Points in space, x, y and z in turn. */
    static Positions deep(double... xyz) {
        double[][] columns = new double[3][xyz.length / 3];
        for (int i = 0; i < xyz.length; i++) {
            columns[i % 3][i / 3] = xyz[i];
        }
        return new Positions(columns[0], columns[1], columns[2]);
    }

    /** Points spread over a box of that half-width. */
    static Positions random(Random random, int count, double halfWidth, Dimensions dimensions) {
        double[] x = new double[count];
        double[] y = new double[count];
        double[] z = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = halfWidth * (2 * random.nextDouble() - 1);
            y[i] = halfWidth * (2 * random.nextDouble() - 1);
            z[i] = dimensions == Dimensions.DEEP ? halfWidth * (2 * random.nextDouble() - 1) : 0;
        }
        return new Positions(x, y, z);
    }

    /** The points with normally distributed errors of that standard deviation in each coordinate. */
    static Positions noisy(Positions points, double sigma, Random random, Dimensions dimensions) {
        int count = points.size();
        double[][] moved = new double[3][count];
        for (int i = 0; i < count; i++) {
            moved[0][i] = points.x(i) + sigma * random.nextGaussian();
            moved[1][i] = points.y(i) + sigma * random.nextGaussian();
            moved[2][i] = points.z(i) + (dimensions == Dimensions.DEEP ? sigma * random.nextGaussian() : 0);
        }
        return new Positions(moved[0], moved[1], moved[2]);
    }

    /** The sum of squared distances, worked out point by point. */
    static double squaredDistances(Positions a, Positions b) {
        double sum = 0;
        for (int i = 0; i < a.size(); i++) {
            double dx = a.x(i) - b.x(i);
            double dy = a.y(i) - b.y(i);
            double dz = a.z(i) - b.z(i);
            sum += dx * dx + dy * dy + dz * dz;
        }
        return sum;
    }

    /** A rotation from three angles in radians. */
    static Matrix3dc rotation(double aboutZ, double aboutX, double aboutY) {
        double cx = StrictMath.cos(aboutX);
        double sx = StrictMath.sin(aboutX);
        double cy = StrictMath.cos(aboutY);
        double sy = StrictMath.sin(aboutY);
        Matrix3dc tilt = Rotations.ofRows(1, 0, 0, 0, cx, -sx, 0, sx, cx);
        Matrix3dc yaw = Rotations.ofRows(cy, 0, sy, 0, 1, 0, -sy, 0, cy);
        return yaw.mul(tilt, new Matrix3d())
                .mul(Rotations.aboutZ(StrictMath.cos(aboutZ), StrictMath.sin(aboutZ)), new Matrix3d());
    }
}
