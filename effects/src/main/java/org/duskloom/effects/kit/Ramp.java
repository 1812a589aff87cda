package org.duskloom.effects.kit;

import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.Patch;

/**
 * A palette compiled for painting many pixels at once: premultiplied linear light, within 1e-4 of {@link Palette#at} in
 * each channel and within [0, 1], with every hard edge at the very float where the palette has it. Painting allocates
 * nothing. A ramp of a palette that moves comes as near to the mix of two palettes as {@link MovingTables} says, and
 * one that does not move is immutable; others are for one thread, see {@link PaletteDial#open}.
 */
public abstract sealed class Ramp permits FlatRamp, StepRamp, CubicRamp, TableRamp, MovingRamp {
    Ramp() {}

    /** The fastest kind of ramp that shows this palette. */
    public static Ramp of(Palette palette) {
        List<PalettePiece> pieces = PalettePiece.of(palette);
        if (SingleRamp.shows(palette)) {
            return new SingleRamp(palette.at(0));
        }
        if (StepRamp.shows(palette, pieces)) {
            return new StepRamp(pieces);
        }
        return CubicRamp.of(pieces).<Ramp>map(cubic -> cubic).orElseGet(() -> new TableRamp(pieces));
    }

    /** Goes to an instant, in seconds from the start of the cue. */
    public void begin(double seconds) {
        // Most ramps are the same at all times.
    }

    /** Whether all its colours are opaque. */
    public abstract boolean isOpaque();

    /** Whether it has only one colour at a time, so that places do not matter. */
    public final boolean isSingle() {
        return this instanceof FlatRamp;
    }

    /**
     * Fills planes with the colours at places.
     *
     * @param places in [0, 1]; none of the other planes
     */
    public final void fill(float[] places, int from, int to, float[] red, float[] green, float[] blue, float[] alpha) {
        fillLight(places, from, to, red, green, blue, alpha);
        if (isOpaque()) {
            Arrays.fill(alpha, from, to, 1f);
        }
    }

    /**
     * Fills the channels of a patch with the colours at places, and makes it opaque if the palette is.
     *
     * @param places in [0, 1]; not one of the patch's channels
     */
    public final void paint(float[] places, Patch patch) {
        fillLight(places, patch.from(), patch.to(), patch.red, patch.green, patch.blue, patch.alpha);
        if (isOpaque()) {
            patch.makeOpaque();
        }
    }

    /**
     * Fills a patch with the colours at places, dimmed by a level each pixel. A ramp of one colour makes it flat.
     *
     * @param places in [0, 1]; not one of the patch's channels
     * @param level in [0, 1]; not one of the patch's channels, unless this ramp is of one colour: then it may be alpha
     */
    public final void paintDimmed(float[] places, float[] level, Patch patch) {
        if (this instanceof FlatRamp flat) {
            flat.paintFlat(level, patch);
        } else {
            paint(places, patch);
            patch.dimBy(level);
        }
    }

    /**
     * Makes a patch flat, as bright as the product of two planes.
     *
     * @throws ClassCastException if this ramp has more than one colour
     */
    public final void paintSingle(float[] level, float[] by, Patch patch) {
        ((FlatRamp) this).paintFlat(level, by, patch);
    }

    /** Fills the channels; an opaque ramp may leave anything in alpha. */
    abstract void fillLight(float[] places, int from, int to, float[] red, float[] green, float[] blue, float[] alpha);
}
