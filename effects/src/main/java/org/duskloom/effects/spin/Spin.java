package org.duskloom.effects.spin;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.BandLook;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.Polar;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * Arms turning about a centre. With a the pixel's angle in turns, counter-clockwise from the right, and r its distance
 * from the centre in canvas units:
 *
 * <pre>
 * u = frac(arms · (a − φ) + bend · r)
 * colour = palette(u / width) · band(u, width, soft)
 * </pre>
 *
 * <p>One pass is one turn, counter-clockwise. Settings: {@code palette}; {@code along} ({@code "width"}: the palette
 * lies across an arm; {@code "radius"}: it runs outward, over the distances in the member); {@code arms} (whole, 1 to
 * 100, default 3); {@code width} (share lit, 0 to 1, default 0.5); {@code soft} (share of the arm, 0 to 0.5, default
 * 0); {@code bend} (gaps between arms per canvas unit, -100 to 100, default 0); the centre {@code x} and {@code y}
 * (canvas units, default 0); those of {@link Motion}.
 */
public final class Spin implements Effect {
    static final PaletteSetting PALETTE = PaletteSetting.of("palette", "colours of an arm", "white");
    static final ChoiceSetting ALONG = ChoiceSetting.of(
            "along", "whether the palette lies across the width of an arm or runs outward", "width", "radius");
    static final NumberSetting ARMS = NumberSetting.whole("arms", "arms", 1, 100, 3, "how many arms there are");
    static final NumberSetting BEND = NumberSetting.of(
            "bend", "gaps per canvas unit", -100, 100, 0, "how far the arms bend back on the way outward");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(PALETTE, ALONG, ARMS),
                    BandLook.SETTINGS,
                    List.of(BEND, Polar.CENTRE_X, Polar.CENTRE_Y),
                    Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Spin() {}

    @Override
    public String name() {
        return "spin";
    }

    @Override
    public String summary() {
        return "arms turning about a centre";
    }

    @Override
    public String formula() {
        return "a = angle in turns, r = distance from the centre; u = frac(arms * (a - passes gone by) + bend * r);"
                + " palette at u / width, or at r, where u < width, softened at both edges";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Motion motion = Motion.of(settings);
        Dial arms = Dial.of(settings, ARMS);
        BandLook look = BandLook.of(settings, PALETTE);
        boolean outward = settings.value(ALONG).equals("radius");
        ArmPattern first = ArmPattern.of(canvas, settings);
        return () -> new SpinBrush(
                first.isConstant() ? first : ArmPattern.of(canvas, settings), arms, motion, look.open(), outward);
    }
}
