package org.duskloom.effects.kit;

import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Settings;

/** A palette setting as one cue has it, compiled for painting. Immutable. */
public final class PaletteDial {
    private final PaletteTrack track;
    /** The ramp if the palette does not move, else null. */
    private final Ramp steady;
    /** What moving ramps are opened on if the palette has several colours and moves, else null. */
    private final MovingTables tables;

    private PaletteDial(PaletteTrack track) {
        this.track = track;
        steady = track.isConstant() ? Ramp.of(track.first()) : null;
        tables = track.isConstant() || isSingle() ? null : MovingTables.of(track);
    }

    /** What the settings say of this one. */
    public static PaletteDial of(Settings settings, PaletteSetting setting) {
        return new PaletteDial(settings.value(setting));
    }

    /** A palette over the time of a cue. */
    public static PaletteDial of(PaletteTrack track) {
        return new PaletteDial(track);
    }

    /** Whether it is the same at all times. */
    public boolean isConstant() {
        return steady != null;
    }

    /** Whether it has only one colour at a time, so that places do not matter. */
    public boolean isSingle() {
        return track.palettes().stream().allMatch(SingleRamp::shows);
    }

    /** The ramp for one thread: {@link Ramp#begin} takes it to an instant. If nothing moves, all threads share one. */
    public Ramp open() {
        if (steady != null) {
            return steady;
        }
        return tables == null ? new MovingSingleRamp(track) : new MovingRamp(tables);
    }
}
