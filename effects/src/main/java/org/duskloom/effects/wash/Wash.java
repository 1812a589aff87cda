package org.duskloom.effects.wash;

import java.util.List;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.Polar;
import org.duskloom.effects.kit.Projection;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.effects.kit.SharePlane;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.ColorSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * Steady colour or a gradient: {@code colour = palette(s)}, where s, from 0 to 1 in each member, is the pixel's place
 * along {@code toward}, or with {@code from: "centre"} its distance from the middle of the canvas.
 *
 * <p>Settings: {@code palette}, or instead of it {@code color}, which may move; {@code from} ({@code "edge"} or {@code
 * "centre"}, default {@code "edge"}); {@code toward} (degrees, default 0).
 */
public final class Wash implements Effect {
    static final PaletteSetting PALETTE = PaletteSetting.of("palette", "colours in the order of s", "white");
    static final ColorSetting COLOR = ColorSetting.of("color", "white", "one colour, instead of a palette");
    static final ChoiceSetting FROM =
            ChoiceSetting.of("from", "where the gradient begins: at one edge or in the middle", "edge", "centre");

    private static final List<Setting<?>> SETTINGS = List.of(PALETTE, COLOR, FROM, Projection.TOWARD);

    /** For the service loader. */
    public Wash() {}

    @Override
    public String name() {
        return "wash";
    }

    @Override
    public String summary() {
        return "steady colour or a gradient";
    }

    @Override
    public String formula() {
        return "s = place along toward, or distance from the centre, 0 to 1 in the member; palette at s";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        boolean fromCentre = settings.value(FROM).equals("centre");
        refuseWhatHasNoUse(settings, fromCentre);
        if (settings.isGiven(COLOR)) {
            return () -> new ColorBrush(settings.value(COLOR));
        }
        PaletteDial palette = PaletteDial.of(settings, PALETTE);
        if (fromCentre) {
            float[] places = Polar.radiiFromTheMiddle(canvas);
            return palette.isConstant()
                    ? steady(palette.open(), places)
                    : () -> new GradientBrush(palette.open(), SharePlane.fixed(places));
        }
        Dial toward = Dial.of(settings, Projection.TOWARD);
        Projection projection = Projection.of(canvas, toward);
        return toward.isConstant() && palette.isConstant()
                ? steady(palette.open(), projection.open().shares())
                : () -> new GradientBrush(palette.open(), projection.open());
    }

    private static Kernel steady(Ramp ramp, float[] places) {
        SteadyLight light = new SteadyLight(ramp, places);
        return () -> light;
    }

    private static void refuseWhatHasNoUse(Settings settings, boolean fromCentre) throws SettingException {
        if (fromCentre && settings.isGiven(Projection.TOWARD)) {
            throw new SettingException(
                    "toward", "toward says nothing where from is \"centre\"", "leave out one of the two");
        }
        for (Setting<?> other : List.of(PALETTE, FROM, Projection.TOWARD)) {
            if (settings.isGiven(COLOR) && settings.isGiven(other)) {
                throw new SettingException(
                        other.name(), other.name() + " says nothing beside color", "leave out one of the two");
            }
        }
    }
}
