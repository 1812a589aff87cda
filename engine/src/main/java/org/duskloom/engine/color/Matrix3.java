package org.duskloom.engine.color;

/** A 3 by 3 matrix, row by row, that is applied to a column of three. */
record Matrix3(
        double m00, double m01, double m02, double m10, double m11, double m12, double m20, double m21, double m22) {

    /** This matrix after the other one has been applied. */
    Matrix3 after(Matrix3 other) {
        return new Matrix3(
                first(other.m00, other.m10, other.m20),
                first(other.m01, other.m11, other.m21),
                first(other.m02, other.m12, other.m22),
                second(other.m00, other.m10, other.m20),
                second(other.m01, other.m11, other.m21),
                second(other.m02, other.m12, other.m22),
                third(other.m00, other.m10, other.m20),
                third(other.m01, other.m11, other.m21),
                third(other.m02, other.m12, other.m22));
    }

    double first(double x, double y, double z) {
        return m00 * x + m01 * y + m02 * z;
    }

    double second(double x, double y, double z) {
        return m10 * x + m11 * y + m12 * z;
    }

    double third(double x, double y, double z) {
        return m20 * x + m21 * y + m22 * z;
    }
}
