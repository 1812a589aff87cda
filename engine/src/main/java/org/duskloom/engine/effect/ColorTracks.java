package org.duskloom.engine.effect;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.MixPath;
import org.duskloom.engine.time.Easing;

/** Colours that move over the time of a cue by the same keys. Immutable; asking allocates nothing. */
public final class ColorTracks {
    /** Floats of a colour. */
    public static final int CHANNELS = 4;

    private final double[] seconds;
    private final Easing[] easings;
    /** To each key, the way of each colour from the key before; to the first key they stay where they are. */
    private final MixPath[][] ways;

    /**
     * Colours that move from key to key.
     *
     * @param colors at each key, all of them
     */
    ColorTracks(double[] seconds, Easing[] easings, List<List<LinearColor>> colors, ColorMix mix) {
        this.seconds = seconds;
        this.easings = easings;
        ways = new MixPath[seconds.length][];
        for (int key = 0; key < ways.length; key++) {
            List<LinearColor> from = colors.get(Math.max(0, key - 1));
            List<LinearColor> to = colors.get(key);
            ways[key] = IntStream.range(0, to.size())
                    .mapToObj(i -> new MixPath(mix, from.get(i), to.get(i)))
                    .toArray(MixPath[]::new);
        }
    }

    /** How many colours there are. */
    public int count() {
        return ways[0].length;
    }

    /** The time between the first key and the last that has the same colours. */
    public double within(double second) {
        return Math.max(seconds[0], Math.min(seconds[seconds.length - 1], second));
    }

    /**
     * Writes the colours at a time in seconds from the start of the cue. Before the first key they are those of the
     * first key, after the last those of the last.
     *
     * @param target receives red, green, blue and alpha of each colour, each in [0, 1], the light not multiplied by
     *     alpha
     */
    public void fill(double second, float[] target) {
        int next = KeyTimes.firstAfter(seconds, second);
        boolean between = next > 0 && next < seconds.length;
        double share = between ? easings[next].at(KeyTimes.share(seconds, next, second)) : 1;
        MixPath[] now = ways[Math.min(next, ways.length - 1)];
        for (int i = 0; i < now.length; i++) {
            now[i].fill(share, target, i * CHANNELS);
        }
    }
}
