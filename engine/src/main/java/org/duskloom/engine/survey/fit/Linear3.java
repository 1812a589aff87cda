package org.duskloom.engine.survey.fit;

/** A matrix of three rows and three columns; {@code xy} stands in the row of x and the column of y. */
record Linear3(double xx, double xy, double xz, double yx, double yy, double yz, double zx, double zy, double zz) {
    static final Linear3 IDENTITY = new Linear3(1, 0, 0, 0, 1, 0, 0, 0, 1);

    /** A turn about z, counter-clockwise seen from where z points to. */
    static Linear3 aboutZ(double cosine, double sine) {
        return new Linear3(cosine, -sine, 0, sine, cosine, 0, 0, 0, 1);
    }

    /** The matrix with these columns, each of three values. */
    static Linear3 ofColumns(double[] x, double[] y, double[] z) {
        return new Linear3(x[0], y[0], z[0], x[1], y[1], z[1], x[2], y[2], z[2]);
    }

    double x(double x, double y, double z) {
        return xx * x + xy * y + xz * z;
    }

    double y(double x, double y, double z) {
        return yx * x + yy * y + yz * z;
    }

    double z(double x, double y, double z) {
        return zx * x + zy * y + zz * z;
    }

    Linear3 times(Linear3 right) {
        return ofColumns(
                column(right.xx, right.yx, right.zx),
                column(right.xy, right.yy, right.zy),
                column(right.xz, right.yz, right.zz));
    }

    Linear3 transposed() {
        return new Linear3(xx, yx, zx, xy, yy, zy, xz, yz, zz);
    }

    /** The columns multiplied by one factor each. */
    Linear3 columnsTimes(double x, double y, double z) {
        return new Linear3(xx * x, xy * y, xz * z, yx * x, yy * y, yz * z, zx * x, zy * y, zz * z);
    }

    /** The sum of the squared differences of all elements. */
    double squaredDifference(Linear3 other) {
        double[] differences = {
            xx - other.xx,
            xy - other.xy,
            xz - other.xz,
            yx - other.yx,
            yy - other.yy,
            yz - other.yz,
            zx - other.zx,
            zy - other.zy,
            zz - other.zz
        };
        double sum = 0;
        for (double difference : differences) {
            sum += difference * difference;
        }
        return sum;
    }

    double determinant() {
        return xx * (yy * zz - yz * zy) - xy * (yx * zz - yz * zx) + xz * (yx * zy - yy * zx);
    }

    private double[] column(double x, double y, double z) {
        return new double[] {x(x, y, z), y(x, y, z), z(x, y, z)};
    }
}
