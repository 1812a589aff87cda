package org.duskloom.effects.kit.area;

/**
 * What part of a picture a light takes in: its cell, upright on the picture. A cell that lies askew on it counts as an upright
 * one of the same variance along both sides of the picture; where the picture turns with time, as a square of the same area.
 *
 * @param cellWidth in pixels of the picture, above 0
 * @param cellHeight in pixels of the picture, above 0
 */
record Footprint(double cellWidth, double cellHeight) {

    static Footprint of(Reel reel, Placing placing, LightField field, Pose pose) {
        // As floats, so that members that are alike but for rounding have the same footprint, and share what it takes
        // to make.
        return new Footprint((float) (reel.width() / cellsAcross(placing, field, pose)), (float)
                (reel.height() / cellsDown(placing, field, pose)));
    }

    /** How many cells go into the width of the picture. */
    static double cellsAcross(Placing placing, LightField field, Pose pose) {
        return placing.width(field) * pose.zoom() / side(placing, field, pose.cosine(), pose.sine());
    }

    /** How many cells go into the height of the picture. */
    static double cellsDown(Placing placing, LightField field, Pose pose) {
        return placing.height(field) * pose.zoom() / side(placing, field, pose.sine(), pose.cosine());
    }

    private static double side(Placing placing, LightField field, double ofWidth, double ofHeight) {
        if (placing.isTurning()) {
            return Math.sqrt(field.cellWidth() * field.cellHeight());
        }
        double width = field.cellWidth() * ofWidth;
        double height = field.cellHeight() * ofHeight;
        return Math.sqrt(width * width + height * height);
    }
}
