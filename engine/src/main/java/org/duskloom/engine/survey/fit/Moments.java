package org.duskloom.engine.survey.fit;

import org.joml.Vector3d;

/**
 * Sums over pairs of points, from which every fit of the one to the other follows without going through the points
 * again. Flat points have z = 0.
 */
final class Moments {
    private int points;
    private double fromX;
    private double fromY;
    private double fromZ;
    private double toX;
    private double toY;
    private double toZ;
    private double from;
    private double to;
    private double xx;
    private double xy;
    private double xz;
    private double yx;
    private double yy;
    private double yz;
    private double zx;
    private double zy;
    private double zz;

    void add(double ux, double uy, double uz, double vx, double vy, double vz) {
        points++;
        fromX += ux;
        fromY += uy;
        fromZ += uz;
        toX += vx;
        toY += vy;
        toZ += vz;
        from += ux * ux + uy * uy + uz * uz;
        to += vx * vx + vy * vy + vz * vz;
        xx += vx * ux;
        xy += vx * uy;
        xz += vx * uz;
        yx += vy * ux;
        yy += vy * uy;
        yz += vy * uz;
        zx += vz * ux;
        zy += vz * uy;
        zz += vz * uz;
    }

    /** These pairs and others together. */
    Moments plus(Moments other) {
        Moments sum = new Moments();
        sum.take(this);
        sum.take(other);
        return sum;
    }

    private void take(Moments other) {
        points += other.points;
        fromX += other.fromX;
        fromY += other.fromY;
        fromZ += other.fromZ;
        toX += other.toX;
        toY += other.toY;
        toZ += other.toZ;
        from += other.from;
        to += other.to;
        xx += other.xx;
        xy += other.xy;
        xz += other.xz;
        yx += other.yx;
        yy += other.yy;
        yz += other.yz;
        zx += other.zx;
        zy += other.zy;
        zz += other.zz;
    }

    int points() {
        return points;
    }

    Vector3d fromMean() {
        return new Vector3d(fromX / points, fromY / points, fromZ / points);
    }

    Vector3d toMean() {
        return new Vector3d(toX / points, toY / points, toZ / points);
    }

    /** For fits that may not move. */
    PairSpread aboutOrigin() {
        return new PairSpread(points, from, to, Rotations.ofRows(xx, xy, xz, yx, yy, yz, zx, zy, zz));
    }

    /** For fits that may move. */
    PairSpread aboutMeans() {
        double ux = fromX / points;
        double uy = fromY / points;
        double uz = fromZ / points;
        return new PairSpread(
                points,
                Math.max(0, from - (fromX * ux + fromY * uy + fromZ * uz)),
                Math.max(0, to - (toX * toX + toY * toY + toZ * toZ) / points),
                Rotations.ofRows(
                        xx - toX * ux,
                        xy - toX * uy,
                        xz - toX * uz,
                        yx - toY * ux,
                        yy - toY * uy,
                        yz - toY * uz,
                        zx - toZ * ux,
                        zy - toZ * uy,
                        zz - toZ * uz));
    }
}
