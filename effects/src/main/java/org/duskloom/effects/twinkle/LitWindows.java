package org.duskloom.effects.twinkle;

import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Levels;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.effects.kit.WindowOffsets;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.random.StableHash;

/**
 * What colour the window has that each pixel is in; transparent black where it is dark. From one frame to another only
 * those pixels are drawn again that came to another window, so this is a cache of values that depend on pixel and
 * window alone. For one thread.
 */
final class LitWindows {
    private static final int LIT_DRAW = 2;
    private static final int COLOR_DRAW = 3;
    private static final int BATCH = 256;

    private final WindowOffsets offsets;
    private final Motion motion;
    private final Dial density;
    private final boolean movingDensity;
    private final double steadyDensity;
    private final Ramp ramp;
    /** Whether of a window only that it is lit is kept, not its colour: there is but one colour, or it moves. */
    private final boolean lightOnly;

    /** In the order in which windows start, which is the order in which they are read. */
    private final int[] litKeyOfSlot;

    private final float[] red;
    private final float[] green;
    private final float[] blue;
    /** Where only light is kept: 1 if the window is lit, else 0. */
    private final float[] alpha;
    /** Where colours move: the place in the palette that was drawn for the window. */
    private final float[] place;

    private final int[] batchPixel;
    private final float[] batchPlace;
    private final float[] batchRed;
    private final float[] batchGreen;
    private final float[] batchBlue;
    private final float[] batchAlpha;
    private int batchSize;

    private boolean drawn;
    private long begun;
    private double lengthSeconds;
    private double startSeconds;

    LitWindows(int[] pixelKeys, WindowOffsets offsets, Motion motion, Dial density, PaletteDial palette) {
        this.offsets = offsets;
        this.motion = motion;
        this.density = density;
        movingDensity = !density.isConstant();
        steadyDensity = density.resting();
        ramp = palette.open();
        lightOnly = ramp.isSingle() || !palette.isConstant();
        litKeyOfSlot = new int[pixelKeys.length];
        for (int slot = 0; slot < litKeyOfSlot.length; slot++) {
            litKeyOfSlot[slot] = StableHash.draw(pixelKeys[offsets.pixelOfSlot(slot)], LIT_DRAW);
        }
        int batch = Math.min(BATCH, pixelKeys.length);
        batchPixel = new int[batch];
        batchPlace = new float[batch];
        batchRed = new float[batch];
        batchGreen = new float[batch];
        batchBlue = new float[batch];
        batchAlpha = new float[batch];
        int coloredPixels = lightOnly ? 0 : pixelKeys.length;
        red = new float[coloredPixels];
        green = new float[coloredPixels];
        blue = new float[coloredPixels];
        alpha = new float[pixelKeys.length];
        place = new float[lightOnly && !ramp.isSingle() ? pixelKeys.length : 0];
    }

    /**
     * Goes to the windows of an instant.
     *
     * @param nowBegun from {@link WindowOffsets#begun}
     */
    void begin(long nowBegun, CueTime time) {
        ramp.begin(time.seconds());
        boolean sameCue = drawn && time.lengthSeconds() == lengthSeconds && time.startSeconds() == startSeconds;
        int count = offsets.pixelCount();
        if (sameCue && nowBegun <= begun && begun - nowBegun < count) {
            draw(nowBegun, begun, 0, time);
        } else {
            long oldest = nowBegun - count;
            draw(sameCue && begun <= nowBegun ? Math.max(begun, oldest) : oldest, nowBegun, 1, time);
        }
        flush();
        drawn = true;
        begun = nowBegun;
        lengthSeconds = time.lengthSeconds();
        startSeconds = time.startSeconds();
    }

    /**
     * Paints the windows' colours.
     *
     * @param level how bright each pixel is within its window, in [0, 1]; a plane of scratch, written to
     */
    void paint(int firstPixel, float[] level, Patch patch) {
        if (lightOnly) {
            patch.load(alpha, firstPixel, patch.third);
            if (place.length > 0) {
                Levels.multiply(level, patch.third, patch.from(), patch.to());
                patch.load(place, firstPixel, patch.third);
                ramp.paintDimmed(patch.third, level, patch);
            } else {
                ramp.paintSingle(patch.third, level, patch);
            }
        } else {
            patch.load(red, firstPixel, patch.red);
            patch.load(green, firstPixel, patch.green);
            patch.load(blue, firstPixel, patch.blue);
            dim(firstPixel, level, patch);
        }
    }

    /** Where colours are opaque, alpha is 1 or 0, and whoever mixes the patch has one plane less to read. */
    private void dim(int firstPixel, float[] level, Patch patch) {
        if (ramp.isOpaque()) {
            patch.load(alpha, firstPixel, patch.third);
            Levels.multiply(level, patch.third, patch.from(), patch.to());
            patch.makeOpaque();
        } else {
            patch.load(alpha, firstPixel, patch.alpha);
        }
        patch.dimBy(level);
    }

    /**
     * Draws windows as they begin.
     *
     * @param from the number of the first, counted over all pixels
     * @param later 1 for the windows that begin then, 0 for those that end then
     */
    private void draw(long from, long toExclusive, int later, CueTime time) {
        if (from >= toExclusive) {
            return;
        }
        int count = offsets.pixelCount();
        int slot = Math.floorMod(from, count);
        long window = Math.floorDiv(from, count) + later;
        for (long left = toExclusive - from; left > 0; left--) {
            draw(slot, window, time);
            if (++slot == count) {
                slot = 0;
                window++;
            }
        }
    }

    private void draw(int slot, long window, CueTime time) {
        int pixel = offsets.pixelOfSlot(slot);
        int bits = StableHash.draw(litKeyOfSlot[slot], (int) window);
        if (!(StableHash.unitFloat(bits) < (movingDensity ? densityAtStart(pixel, window, time) : steadyDensity))) {
            put(pixel, 0, 0, 0, 0);
        } else if (lightOnly) {
            alpha[pixel] = 1;
            if (place.length > 0) {
                place[pixel] = StableHash.unitFloat(StableHash.draw(bits, COLOR_DRAW));
            }
        } else {
            batchPixel[batchSize] = pixel;
            batchPlace[batchSize] = StableHash.unitFloat(StableHash.draw(bits, COLOR_DRAW));
            batchSize++;
            if (batchSize == batchPixel.length) {
                flush();
            }
        }
    }

    private double densityAtStart(int pixel, long window, CueTime time) {
        double phiAtStart = window - offsets.ofPixels()[pixel] + (motion.isReversed() ? 1 : 0);
        return density.at(motion.secondsWhen(phiAtStart, time), time);
    }

    private void flush() {
        ramp.fill(batchPlace, 0, batchSize, batchRed, batchGreen, batchBlue, batchAlpha);
        for (int i = 0; i < batchSize; i++) {
            put(batchPixel[i], batchRed[i], batchGreen[i], batchBlue[i], batchAlpha[i]);
        }
        batchSize = 0;
    }

    private void put(int pixel, float newRed, float newGreen, float newBlue, float newAlpha) {
        alpha[pixel] = newAlpha;
        if (!lightOnly) {
            red[pixel] = newRed;
            green[pixel] = newGreen;
            blue[pixel] = newBlue;
        }
    }
}
