package org.duskloom.effects.drift;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.Projection;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * Slow clouds, embers, water: improved gradient noise (K. Perlin, "Improving Noise", SIGGRAPH 2002) in space, of which
 * the canvas is a plane that moves at one noise cell a pass. With a and b the pixel's place along {@code toward} and a
 * quarter turn from it, in noise cells ({@code scale} cells to the longer side), and w the {@code wind}:
 *
 * <pre>
 * x = a · √(1 − w²),  y = b,  z = φ − a · w
 * n = Σ r^o · noise(2^o x, 2^o y, 2^o z) / Σ r^o      over the octaves o = 0, 1, ..., r being the roughness
 * colour = palette(0.5 + contrast · n), clamped
 * </pre>
 *
 * <p>With no wind the clouds change where they are; with wind 1 they slide toward {@code toward} and do not change;
 * between them they do some of both. Each octave of each member has its noise moved by what its key says.
 *
 * <p>Settings: {@code palette}; {@code scale} (cells, 0.01 to 100, default 4); {@code octaves} (whole, 1 to 6, default
 * 2); {@code roughness} (share, 0 to 1, default 0.5); {@code contrast} (palette lengths, 0 to 20, default 1.5); {@code
 * wind} (share, 0 to 1, default 0); {@code toward} (degrees, default 0); those of {@link Motion}. Where {@code scale},
 * {@code wind} or {@code toward} move, all the noise is new in every frame, which takes some fourteen times as long:
 * sixteen products with gradients for each pixel and octave, where otherwise few pixels have come to another cell since
 * the frame before.
 */
public final class Drift implements Effect {
    static final PaletteSetting PALETTE = PaletteSetting.of(
            "palette", "colours from the hollows of the noise to its crests", "midnightblue", "paleturquoise");
    static final NumberSetting SCALE = NumberSetting.of(
            "scale",
            "cells",
            0.01,
            100,
            3,
            "how many noise cells lie along the longer side; more makes smaller clouds");
    static final NumberSetting OCTAVES = NumberSetting.whole(
            "octaves", "octaves", 1, 6, 2, "how many layers of noise, each twice as fine and quick as the one before");
    static final NumberSetting ROUGHNESS =
            NumberSetting.of("roughness", "share", 0, 1, 0.5, "how strong each layer is against the one before");
    static final NumberSetting CONTRAST = NumberSetting.of(
            "contrast", "palette lengths", 0, 20, 1.5, "how far the noise reaches from the middle of the palette");
    static final NumberSetting WIND = NumberSetting.of(
            "wind", "share", 0, 1, 0, "how much the clouds slide toward toward, rather than change where they are");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(PALETTE, SCALE, OCTAVES, ROUGHNESS, CONTRAST, WIND, Projection.TOWARD), Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Drift() {}

    @Override
    public String name() {
        return "drift";
    }

    @Override
    public String summary() {
        return "slow clouds, embers, water";
    }

    @Override
    public String formula() {
        return "n = sum of octaves of gradient noise at (a * sqrt(1 - wind^2), b, passes gone by - a * wind), a and b being"
                + " the place along and across toward in noise cells; palette at 0.5 + contrast * n";
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
        Motion motion = Motion.of(settings);
        PaletteDial palette = PaletteDial.of(settings, PALETTE);
        Dial contrast = Dial.of(settings, CONTRAST);
        Octaves first = Octaves.of(canvas, settings);
        return () -> {
            Octaves octaves = first.isConstant() ? first : Octaves.of(canvas, settings);
            return new DriftBrush(motion, octaves.open(), contrast, palette.open());
        };
    }
}
