package org.duskloom.effects.kit.area;

import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Kernel;

/**
 * Paints a reel of pictures on the lights of a canvas, each member by itself: on every light the mean of its cell. What
 * lies still is computed beforehand. What moves is computed anew in each frame, from tables of sums, so that the cost
 * of a light does not depend on the size of the pictures; it is the same mean but for a thirty-second of a cell's
 * light, where a cell covers more than 16 pixels along a side and the pictures are reduced first.
 */
public final class AreaKernel {
    /** A still reel is cached light by light while that takes no more floats than this; 256 MB. */
    private static final long MOST_CACHED_FLOATS = 1L << 26;

    private AreaKernel() {}

    /**
     * How the pictures are seen.
     *
     * @param repeats whether they go on beyond their edges, else it is transparent there
     * @param sharp whether their pixels are seen as squares of even light where they are larger than a light, else one
     *     runs into the other
     */
    public record Style(boolean repeats, boolean sharp) {}

    /** A kernel for all that. */
    public static Kernel of(Canvas canvas, Reel reel, ReelClock clock, Placing placing, Style style) {
        List<LightField> fields = LightField.of(canvas);
        long cachedFloats = (long) canvas.pixelCount() * reel.count() * LightImage.CHANNELS;
        if (placing.isStill() && cachedFloats <= MOST_CACHED_FLOATS) {
            StillLight light = StillLight.of(canvas, fields, reel, placing, style);
            return () -> new StillBrush(light, clock);
        }
        return looking(canvas, reel, clock, placing, style);
    }

    /**
     * A kernel that looks light up even where it lies still. Its brush leaves in the patch's plane {@code first} where
     * in the picture each light is, as a share of the width, from the left, in [0, 1].
     */
    public static Kernel looking(Canvas canvas, Reel reel, ReelClock clock, Placing placing, Style style) {
        MovingLight light = MovingLight.of(canvas, LightField.of(canvas), reel, placing, style);
        return () -> new MovingBrush(light, clock);
    }
}
