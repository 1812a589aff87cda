package org.duskloom.effects.morph;

/** The straight way from one place to another. */
record Segment(double x, double y, double z, double toX, double toY, double toZ) {

    /** The way of a dot between two places, given by {@link Spots}. */
    static Segment of(double[] from, double[] to, int dot) {
        int at = Spots.AXES * dot;
        return new Segment(from[at], from[at + 1], from[at + 2], to[at], to[at + 1], to[at + 2]);
    }

    /** The square of the distance of a place from the nearest point of the way. */
    double squaredDistance(double[] spots, int spot) {
        int at = Spots.AXES * spot;
        double wayX = toX - x;
        double wayY = toY - y;
        double wayZ = toZ - z;
        double dx = spots[at] - x;
        double dy = spots[at + 1] - y;
        double dz = spots[at + 2] - z;
        double square = wayX * wayX + wayY * wayY + wayZ * wayZ;
        double along = square > 0 ? (dx * wayX + dy * wayY + dz * wayZ) / square : 0;
        double share = Math.min(1, Math.max(0, along));
        double restX = dx - share * wayX;
        double restY = dy - share * wayY;
        double restZ = dz - share * wayZ;
        return restX * restX + restY * restY + restZ * restZ;
    }
}
