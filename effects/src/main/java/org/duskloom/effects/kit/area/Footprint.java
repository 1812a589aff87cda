package org.duskloom.effects.kit.area;

/**
 * What part of a picture a light takes in: its cell, upright on the picture. A cell that lies askew on it counts as an
 * upright one of the same variance along both sides of the picture.
 *
 * @param cellWidth in pixels of the picture, above 0
 * @param cellHeight in pixels of the picture, above 0
 */
record Footprint(double cellWidth, double cellHeight) {

    static Footprint of(Reel reel, Placing placing, LightField field, Pose pose) {
        return new Footprint(cellWidth(reel, placing, field, pose), cellHeight(reel, placing, field, pose));
    }

    /** How wide it is, in pixels of the picture. */
    static double cellWidth(Reel reel, Placing placing, LightField field, Pose pose) {
        return side(field, pose.cosine(), pose.sine()) * reel.width() / (placing.width(field) * pose.zoom());
    }

    /** How high it is, in pixels of the picture. */
    static double cellHeight(Reel reel, Placing placing, LightField field, Pose pose) {
        return side(field, pose.sine(), pose.cosine()) * reel.height() / (placing.height(field) * pose.zoom());
    }

    private static double side(LightField field, double ofWidth, double ofHeight) {
        double width = field.cellWidth() * ofWidth;
        double height = field.cellHeight() * ofHeight;
        return Math.sqrt(width * width + height * height);
    }
}
