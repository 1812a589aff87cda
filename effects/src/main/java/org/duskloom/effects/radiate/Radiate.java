package org.duskloom.effects.radiate;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.BandLook;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.MovingBands;
import org.duskloom.effects.kit.Polar;
import org.duskloom.effects.kit.Repeats;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * Rings running out from a centre; in to it with {@code reverse}. With r the pixel's distance from the centre and R
 * that of the farthest pixel of its member:
 *
 * <pre>
 * s = r / R
 * u = frac(bands · s − φ)
 * colour = palette(u / width) · band(u, width, soft)
 * </pre>
 *
 * <p>One pass moves the rings by one band. The distance is measured from the centre itself, not from the nearest pixel,
 * so rings that lie one within the other light one after the other. Settings: {@code palette}; {@code bands} (how many
 * lie between the centre and the farthest pixel, 0 to 1000, default 1); {@code width} (share lit, 0 to 1, default 0.5);
 * {@code soft} (share of the band, 0 to 0.5, default 0); the centre {@code x} and {@code y} (canvas units, default 0);
 * those of {@link Motion}.
 */
public final class Radiate implements Effect {
    static final PaletteSetting PALETTE =
            PaletteSetting.of("palette", "colours across a ring, from its inner edge", "white");
    static final NumberSetting BANDS = NumberSetting.of(
            "bands", "bands", 0, 1000, 1, "how many rings lie between the centre and the farthest pixel");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(PALETTE, BANDS),
                    BandLook.SETTINGS,
                    List.of(Polar.CENTRE_X, Polar.CENTRE_Y),
                    Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Radiate() {}

    @Override
    public String name() {
        return "radiate";
    }

    @Override
    public String summary() {
        return "rings running out or in";
    }

    @Override
    public String formula() {
        return "s = distance from the centre over that of the member's farthest pixel;"
                + " u = frac(bands * s - passes gone by); palette at u / width where u < width, softened at both edges";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Motion motion = Motion.of(settings);
        Dial bands = Dial.of(settings, BANDS);
        BandLook look = BandLook.of(settings, PALETTE);
        Repeats first = Repeats.rising(Reaches.of(canvas, settings), bands);
        return () -> new MovingBands(
                first.isConstant() ? first : Repeats.rising(Reaches.of(canvas, settings), bands), motion, look.open());
    }
}
