package org.duskloom.effects.twinkle;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.WindowOffsets;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.Shown;
import org.duskloom.engine.random.StableHash;

/**
 * Pixels sparkling by themselves. Every pixel has windows of one pass each, moved against those of the others by an
 * offset in [0, 1) drawn for the pixel:
 *
 * <pre>
 * window = floor(φ + offset),  f = frac(φ + offset)
 * colour = palette(draw for pixel and window) · min(1, f / rise, (1 − f) / fall)   if the window is lit, else nothing
 * </pre>
 *
 * <p>A window is lit if another draw for pixel and window is below the {@code density} at the instant where the window
 * starts (with a moving phase: where it would start if the phase had stayed as at the start of the cue). All draws are
 * hashes of the pixel's random key, so they do not change with other props and cues.
 *
 * <p>The place in the palette is drawn once for the window; where the palette moves, the colour goes with it.
 *
 * <p>Settings: {@code palette}; {@code density} (probability, 0 to 1, default 0.3); {@code rise} and {@code fall}
 * (shares of the window, 0 to 1, default 0.2 and 0.5); those of {@link Motion}.
 */
public final class Twinkle implements Effect {
    static final PaletteSetting PALETTE =
            PaletteSetting.of("palette", "colours to draw from, each place as likely", "white");
    static final NumberSetting DENSITY =
            NumberSetting.of("density", "probability", 0, 1, 0.3, "how likely a pixel is to light up in a pass");
    static final NumberSetting RISE =
            NumberSetting.of("rise", "share of the pass", 0, 1, 0.2, "how long a pixel takes to become bright");
    static final NumberSetting FALL =
            NumberSetting.of("fall", "share of the pass", 0, 1, 0.5, "how long a pixel takes to become dark");

    private static final int OFFSET_DRAW = 1;

    private static final List<Setting<?>> SETTINGS = Stream.of(List.of(PALETTE, DENSITY, RISE, FALL), Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Twinkle() {}

    @Override
    public String name() {
        return "twinkle";
    }

    @Override
    public String summary() {
        return "pixels sparkling by themselves";
    }

    @Override
    public String formula() {
        return "window = floor(passes gone by + the pixel's offset), f = the rest; lit with probability density;"
                + " palette at a place drawn for pixel and window, times min(1, f / rise, (1 - f) / fall)";
    }

    @Override
    public boolean usesChance() {
        return true;
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Dial rise = Dial.of(settings, RISE);
        Dial fall = Dial.of(settings, FALL);
        refuseEndlessEdges(rise, fall);
        Motion motion = Motion.of(settings);
        Dial density = Dial.of(settings, DENSITY);
        PaletteDial palette = PaletteDial.of(settings, PALETTE);
        WindowOffsets offsets = new WindowOffsets(offsets(canvas.pixelKey()));
        return () -> new TwinkleBrush(
                motion, offsets, new LitWindows(canvas.pixelKey(), offsets, motion, density, palette), rise, fall);
    }

    private static float[] offsets(int[] pixelKeys) {
        float[] offsets = new float[pixelKeys.length];
        for (int pixel = 0; pixel < offsets.length; pixel++) {
            offsets[pixel] = StableHash.unitFloat(StableHash.draw(pixelKeys[pixel], OFFSET_DRAW));
        }
        return offsets;
    }

    private static void refuseEndlessEdges(Dial rise, Dial fall) throws SettingException {
        if (rise.isConstant() && fall.isConstant() && rise.resting() + fall.resting() > 1 + 1e-9) {
            throw new SettingException(
                    "fall",
                    "rise " + Shown.number(rise.resting()) + " and fall " + Shown.number(fall.resting())
                            + " are longer than the pass",
                    "together at most 1");
        }
    }
}
