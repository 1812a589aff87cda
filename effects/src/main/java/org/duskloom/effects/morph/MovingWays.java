package org.duskloom.effects.morph;

import org.duskloom.engine.color.LiveMix;
import org.duskloom.engine.effect.ColorTracks;

/**
 * Ways between colours that move. A frame costs the mixes of two palettes and six cube roots for each way. For one
 * thread.
 */
final class MovingWays implements ColorWays {
    private final ColorTracks starts;
    private final ColorTracks ends;
    private final float[] startColors;
    private final float[] endColors;

    /**
     * @param starts where each way starts
     * @param ends where it ends
     */
    MovingWays(ColorTracks starts, ColorTracks ends) {
        this.starts = starts;
        this.ends = ends;
        startColors = new float[starts.count() * ColorTracks.CHANNELS];
        endColors = new float[startColors.length];
    }

    @Override
    public int count() {
        return starts.count();
    }

    @Override
    public void fill(double seconds, float share, Colors colors) {
        starts.fill(seconds, startColors);
        ends.fill(seconds, endColors);
        for (int way = 0; way < starts.count(); way++) {
            int at = way * ColorTracks.CHANNELS;
            LiveMix.fill(startColors, endColors, at, share, startColors);
            float alpha = startColors[at + 3];
            colors.red[way] = startColors[at] * alpha;
            colors.green[way] = startColors[at + 1] * alpha;
            colors.blue[way] = startColors[at + 2] * alpha;
            colors.alpha[way] = alpha;
        }
    }
}
