package org.duskloom.effects.kit;

import org.duskloom.engine.effect.ColorTracks;

/**
 * A palette of several colours that moves: tables that are filled anew in each frame in which it does. An entry costs
 * one mix of two colours, a look-up as much as in a {@link TableRamp}: some 8 ns a pixel in all. For one thread.
 */
final class MovingRamp extends Ramp {
    private final MovingTables shared;
    /** Red, green, blue and alpha of each entry. */
    private final float[] colors;

    /** The same, multiplied by alpha. */
    private final float[] tables;

    private double filledFor = Double.NaN;

    MovingRamp(MovingTables shared) {
        this.shared = shared;
        colors = new float[shared.entries().count() * ColorTracks.CHANNELS];
        tables = new float[colors.length];
        begin(0);
    }

    @Override
    public void begin(double seconds) {
        double within = shared.entries().within(seconds);
        if (within == filledFor) {
            return;
        }
        filledFor = within;
        shared.entries().fill(within, colors);
        for (int i = 0; i < tables.length; i += TablePlaces.CHANNELS) {
            float alpha = colors[i + 3];
            tables[i] = colors[i] * alpha;
            tables[i + 1] = colors[i + 1] * alpha;
            tables[i + 2] = colors[i + 2] * alpha;
            tables[i + 3] = alpha;
        }
    }

    @Override
    public boolean isOpaque() {
        return shared.opaque();
    }

    @Override
    void fillLight(float[] places, int from, int to, float[] red, float[] green, float[] blue, float[] alpha) {
        shared.places().fill(tables, shared.opaque(), places, from, to, red, green, blue, alpha);
    }
}
