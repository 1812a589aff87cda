package org.duskloom.effects.kit.area;

/**
 * From the places of lights to places in a picture, at an instant: <i>shareX = anchorX + (right·cos + up·sin) /
 * width</i>, <i>shareY = anchorY − (up·cos − right·sin) / height</i>, where right and up are measured from the anchor.
 * Reused from frame to frame.
 */
final class Mapping {
    private double xOfRight;
    private double xOfUp;
    private double xOfMiddle;
    private double yOfRight;
    private double yOfUp;
    private double yOfMiddle;

    void set(Placing placing, LightField field, Pose pose) {
        double width = placing.width(field) * pose.zoom();
        double height = placing.height(field) * pose.zoom();
        xOfRight = pose.cosine() / width;
        xOfUp = pose.sine() / width;
        xOfMiddle = placing.anchorX() - pose.right() * xOfRight - pose.up() * xOfUp;
        yOfRight = pose.sine() / height;
        yOfUp = -pose.cosine() / height;
        yOfMiddle = placing.anchorY() - pose.right() * yOfRight - pose.up() * yOfUp;
    }

    /** A share of the picture's width; right and up are canvas units from the middle of the field. */
    double shareX(double right, double up) {
        return xOfMiddle + right * xOfRight + up * xOfUp;
    }

    /** A share of the picture's height. */
    double shareY(double right, double up) {
        return yOfMiddle + right * yOfRight + up * yOfUp;
    }

    double xOfRight() {
        return xOfRight;
    }

    double xOfUp() {
        return xOfUp;
    }

    double xOfMiddle() {
        return xOfMiddle;
    }

    double yOfRight() {
        return yOfRight;
    }

    double yOfUp() {
        return yOfUp;
    }

    double yOfMiddle() {
        return yOfMiddle;
    }
}
