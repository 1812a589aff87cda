package org.duskloom.effects.kit.area;

import org.duskloom.engine.effect.CueTime;

/**
 * A picture laid out for tests: its middle is its anchor.
 *
 * @param wide canvas units at zoom 1
 * @param high likewise
 * @param zoom sizes
 * @param degrees counter-clockwise
 * @param right of the middle of the field
 * @param up likewise
 * @param still whether it is said to be still
 */
record Laid(double wide, double high, double zoom, double degrees, double right, double up, boolean still)
        implements Placing {
    /** Upright, in the middle, and still. */
    static Laid of(double wide, double high) {
        return new Laid(wide, high, 1, 0, 0, 0, true);
    }

    Laid zoomed(double times) {
        return new Laid(wide, high, times, degrees, right, up, still);
    }

    Laid turned(double by) {
        return new Laid(wide, high, zoom, by, right, up, still);
    }

    Laid moved(double toTheRight, double upward) {
        return new Laid(wide, high, zoom, degrees, toTheRight, upward, still);
    }

    /** The same pose, but said to move, so that light is looked up. */
    Laid moving() {
        return new Laid(wide, high, zoom, degrees, right, up, false);
    }

    Pose pose(LightField field) {
        Pose pose = new Pose();
        pose(new CueTime(), field, pose);
        return pose;
    }

    @Override
    public boolean isStill() {
        return still;
    }

    @Override
    public double width(LightField field) {
        return wide;
    }

    @Override
    public double height(LightField field) {
        return high;
    }

    @Override
    public double[] zoomRange(LightField field) {
        return new double[] {zoom, zoom};
    }

    @Override
    public double anchorX() {
        return 0.5;
    }

    @Override
    public double anchorY() {
        return 0.5;
    }

    @Override
    public void pose(CueTime time, LightField field, Pose pose) {
        pose.zoom(zoom);
        pose.turn(degrees);
        pose.move(right, up);
    }
}
