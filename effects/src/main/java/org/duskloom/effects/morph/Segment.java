package org.duskloom.effects.morph;

/** The straight way from one place to another. */
record Segment(double x, double y, double z, double toX, double toY, double toZ) {

    /** The way of a dot between two places. */
    static Segment of(Spots from, Spots to, int dot) {
        return new Segment(from.x(dot), from.y(dot), from.z(dot), to.x(dot), to.y(dot), to.z(dot));
    }

    /** The square of the distance of a place from the nearest point of the way. */
    double squaredDistance(Spots spots, int spot) {
        double wayX = toX - x;
        double wayY = toY - y;
        double wayZ = toZ - z;
        double dx = spots.x(spot) - x;
        double dy = spots.y(spot) - y;
        double dz = spots.z(spot) - z;
        double square = wayX * wayX + wayY * wayY + wayZ * wayZ;
        double along = square > 0 ? (dx * wayX + dy * wayY + dz * wayZ) / square : 0;
        double share = Math.min(1, Math.max(0, along));
        double restX = dx - share * wayX;
        double restY = dy - share * wayY;
        double restZ = dz - share * wayZ;
        return restX * restX + restY * restY + restZ * restZ;
    }
}
