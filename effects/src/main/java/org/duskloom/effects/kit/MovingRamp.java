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

    private final float[][] tables;
    private double filledFor = Double.NaN;

    MovingRamp(MovingTables shared) {
        this.shared = shared;
        colors = new float[shared.entries().count() * ColorTracks.CHANNELS];
        tables = new float[shared.intervals().length][];
        for (int piece = 0; piece < tables.length; piece++) {
            tables[piece] = new float[(shared.intervals()[piece] + 1) * TablePlaces.CHANNELS];
        }
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
        int at = 0;
        for (float[] table : tables) {
            premultiply(colors, at, table);
            at += table.length;
        }
    }

    private static void premultiply(float[] colors, int first, float[] table) {
        for (int i = 0; i < table.length; i += TablePlaces.CHANNELS) {
            float alpha = colors[first + i + 3];
            table[i] = colors[first + i] * alpha;
            table[i + 1] = colors[first + i + 1] * alpha;
            table[i + 2] = colors[first + i + 2] * alpha;
            table[i + 3] = alpha;
        }
    }

    @Override
    public boolean isOpaque() {
        return shared.opaque();
    }

    @Override
    void fillLight(float[] places, int from, int to, float[] red, float[] green, float[] blue, float[] alpha) {
        shared.places().fill(tables, places, from, to, red, green, blue, alpha);
    }
}
