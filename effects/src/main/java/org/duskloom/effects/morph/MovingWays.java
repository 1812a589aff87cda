package org.duskloom.effects.morph;

import org.duskloom.engine.color.LiveMix;
import org.duskloom.engine.effect.ColorTracks;

/**
 * Ways between colours that move. A frame costs a mix of palettes and three cube roots for each colour at which ways
 * start or end, and a mix for each way. For one thread.
 */
final class MovingWays implements ColorWays {
    private final LiveColors starts;
    private final LiveColors ends;
    private final int[] startOf;
    private final int[] endOf;
    private final float[] mixed = new float[ColorTracks.CHANNELS];

    /**
     * Ways between some colours.
     *
     * @param starts colours at which ways start
     * @param ends colours at which they end; may be the same
     * @param startOf among the starts, that of each way
     * @param endOf among the ends, that of each way
     */
    MovingWays(LiveColors starts, LiveColors ends, int[] startOf, int[] endOf) {
        this.starts = starts;
        this.ends = ends;
        this.startOf = startOf;
        this.endOf = endOf;
    }

    @Override
    public int count() {
        return startOf.length;
    }

    @Override
    public void fill(double seconds, float share, Colors colors) {
        starts.begin(seconds);
        ends.begin(seconds);
        float[] channels = colors.channels;
        double left = 1 - (double) share;
        for (int way = 0; way < startOf.length; way++) {
            int start = startOf[way];
            int end = endOf[way];
            LiveMix.fill(
                    starts.roots(),
                    start * LiveMix.ROOTS,
                    starts.alpha(start) * left,
                    ends.roots(),
                    end * LiveMix.ROOTS,
                    ends.alpha(end) * (double) share,
                    mixed,
                    0);
            float alpha = mixed[3];
            int at = Light.CHANNELS * way;
            channels[at] = mixed[0] * alpha;
            channels[at + 1] = mixed[1] * alpha;
            channels[at + 2] = mixed[2] * alpha;
            channels[at + 3] = alpha;
        }
    }
}
