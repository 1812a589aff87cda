package org.duskloom.effects.kit.area;

import org.duskloom.engine.geometry.Degrees;

/** How a picture lies at an instant: its size, its turn, and where its anchor is. Reused from frame to frame. */
public final class Pose {
    private double zoom = 1;
    private double cosine = 1;
    private double sine;
    private double right;
    private double up;

    Pose() {}

    /** Sets the size, in sizes that the picture has at zoom 1. */
    public void zoom(double times) {
        zoom = times;
    }

    /** Turns the picture about its anchor, counter-clockwise; exact at the quarter turns. */
    public void turn(double degrees) {
        cosine = Degrees.cosine(degrees);
        sine = Degrees.cosine(degrees - 90);
    }

    /** Puts the picture's anchor there, in canvas units from the middle of the field. */
    public void move(double toTheRight, double upward) {
        right = toTheRight;
        up = upward;
    }

    double zoom() {
        return zoom;
    }

    double cosine() {
        return cosine;
    }

    double sine() {
        return sine;
    }

    double right() {
        return right;
    }

    double up() {
        return up;
    }
}
