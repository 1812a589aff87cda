package org.duskloom.effects.kit;

import java.util.List;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;

/** How the bands of an effect look: how wide, how soft, in which colours. Immutable. */
public final class BandLook {
    /** Share of the distance from band to band that is lit. */
    public static final NumberSetting WIDTH =
            NumberSetting.of("width", "share", 0, 1, 0.5, "how much of the way from band to band is lit");

    /** Share of the band that each soft edge takes. */
    public static final NumberSetting SOFT =
            NumberSetting.of("soft", "share of the band", 0, 0.5, 0, "how much of the band each soft edge takes");

    /** The two settings, in the order of the reference. */
    public static final List<Setting<?>> SETTINGS = List.of(WIDTH, SOFT);

    private final PaletteDial palette;
    private final Dial width;
    private final Dial soft;

    private BandLook(PaletteDial palette, Dial width, Dial soft) {
        this.palette = palette;
        this.width = width;
        this.soft = soft;
    }

    /** What the settings say. */
    public static BandLook of(Settings settings, PaletteSetting palette) {
        return new BandLook(PaletteDial.of(settings, palette), Dial.of(settings, WIDTH), Dial.of(settings, SOFT));
    }

    /** A painter for one thread. */
    public Painter open() {
        return new Painter();
    }

    /** Paints the bands of an instant. */
    public final class Painter {
        private final Ramp ramp = palette.open();
        private float widthNow;
        private float softNow;

        private Painter() {}

        /** Goes to an instant. */
        public void begin(CueTime time) {
            ramp.begin(time.seconds());
            widthNow = width.floatAt(time);
            softNow = soft.floatAt(time);
        }

        /**
         * Paints with the colours across the band: the palette at u / width.
         *
         * @param patch its plane {@code first} holds u, in [0, 1); its other planes are written to
         */
        public void paintAcross(Patch patch) {
            if (isEverywhere()) {
                ramp.paint(patch.first, patch);
                return;
            }
            if (!ramp.isSingle()) {
                Band.positions(patch.first, widthNow, patch.from(), patch.to(), patch.third);
            }
            paintAlong(patch);
        }

        /**
         * Paints with colours from elsewhere.
         *
         * @param patch its plane {@code first} holds u, in [0, 1), its plane {@code third} the places in the palette,
         *     in [0, 1]; its other planes are written to
         */
        public void paintAlong(Patch patch) {
            if (isEverywhere()) {
                ramp.paint(patch.third, patch);
            } else {
                // One colour's level is alpha already.
                float[] level = ramp.isSingle() ? patch.alpha : patch.second;
                Band.levels(patch.first, widthNow, softNow, patch.from(), patch.to(), level);
                ramp.paintDimmed(patch.third, level, patch);
            }
        }

        private boolean isEverywhere() {
            return widthNow >= 1 && softNow == 0;
        }
    }
}
