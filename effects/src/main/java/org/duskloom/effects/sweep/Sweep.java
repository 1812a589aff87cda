package org.duskloom.effects.sweep;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.BandLook;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.MovingBands;
import org.duskloom.effects.kit.Projection;
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
 * Straight bands crossing. With s the pixel's place along {@code toward} in its member, 0 to 1:
 *
 * <pre>
 * u = frac(bands · s − φ)
 * colour = palette(u / width) · band(u, width, soft)
 * </pre>
 *
 * <p>One pass moves the pattern by one band, toward {@code toward}. Settings: {@code palette}; {@code bands} (how many
 * lie across a member, 0 to 1000, default 1); {@code width} (share lit, 0 to 1, default 0.5); {@code soft} (share of
 * the band, 0 to 0.5, default 0); {@code toward} (degrees, default 0); those of {@link Motion}.
 */
public final class Sweep implements Effect {
    static final PaletteSetting PALETTE =
            PaletteSetting.of("palette", "colours across a band, from the edge that comes last", "white");
    static final NumberSetting BANDS =
            NumberSetting.of("bands", "bands", 0, 1000, 1, "how many bands lie across a member");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(PALETTE, BANDS), BandLook.SETTINGS, List.of(Projection.TOWARD), Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Sweep() {}

    @Override
    public String name() {
        return "sweep";
    }

    @Override
    public String summary() {
        return "straight bands crossing";
    }

    @Override
    public String formula() {
        return "s = place along toward, 0 to 1 in the member; u = frac(bands * s - passes gone by);"
                + " palette at u / width where u < width, softened at both edges";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Projection projection = Projection.of(canvas, Dial.of(settings, Projection.TOWARD));
        BandLook look = BandLook.of(settings, PALETTE);
        Dial bands = Dial.of(settings, BANDS);
        Motion motion = Motion.of(settings);
        Repeats first = Repeats.rising(projection.open(), bands);
        return () -> new MovingBands(
                first.isConstant() ? first : Repeats.rising(projection.open(), bands), motion, look.open());
    }
}
