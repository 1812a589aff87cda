package org.duskloom.effects.morph;

import org.duskloom.engine.color.LiveMix;
import org.duskloom.engine.effect.ColorTracks;

/** Colours that move, and what mixes of them are made from. For one thread. */
final class LiveColors {
    private final ColorTracks tracks;
    private final float[] colors;
    private final double[] roots;
    private double filledFor = Double.NaN;

    LiveColors(ColorTracks tracks) {
        this.tracks = tracks;
        colors = new float[tracks.count() * ColorTracks.CHANNELS];
        roots = new double[tracks.count() * LiveMix.ROOTS];
    }

    /** Goes to an instant, in seconds from the start of the cue. */
    void begin(double seconds) {
        double within = tracks.within(seconds);
        if (within == filledFor) {
            return;
        }
        filledFor = within;
        tracks.fill(within, colors);
        for (int color = 0; color < tracks.count(); color++) {
            LiveMix.fillRoots(colors, color * ColorTracks.CHANNELS, roots, color * LiveMix.ROOTS);
        }
    }

    float alpha(int color) {
        return colors[color * ColorTracks.CHANNELS + 3];
    }

    /** The roots of all colours, by {@link LiveMix#fillRoots}. */
    double[] roots() {
        return roots;
    }
}
