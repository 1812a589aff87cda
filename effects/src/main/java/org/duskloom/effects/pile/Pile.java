package org.duskloom.effects.pile;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Easings;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;

/**
 * Lights arriving one by one and staying. L lights, each 1/L of the order long, enter at its far end; light m (from 0)
 * runs to [m/L, (m + 1)/L), on top of those before it. One pass is one filling: with w = min(1, frac(φ) / (1 − hold))
 * the share of the filling that is done,
 *
 * <pre>
 * steady "speed": m is the last with D(m) ≤ w · D(L),  p = (w · D(L) − D(m)) / (1 − m/L),  D(m) = m − m(m − 1)/(2L)
 * steady "time":  m = floor(w · L),  p = frac(w · L)
 * lit: [0, m/L) and [b, b + 1/L),  b = max(m/L, 1 + (m/L − 1) · E(p))
 * </pre>
 *
 * <p>D(m) is how far the first m lights run, E is the easing. A pixel is as bright as the share of its own step that is
 * lit, so lights glide from pixel to pixel; what lights of several colours share has the mean of them by their shares
 * of the step. With {@code reverse} all of this runs backward in time.
 *
 * <p>Settings: {@code palette}; {@code along} ({@code "order"}: along the order; {@code "light"}: one colour for each
 * light, from the first to the last); {@code lights} (whole, 1 to 1000, default 12); {@code steady} ({@code "speed"} or
 * {@code "time"}: what all lights share, default {@code "speed"}); {@code easing} (of CSS, of each run, default {@code
 * linear}); {@code ground} (the end of the order where the pile stands, {@code "start"} or {@code "end"}); {@code hold}
 * (share of the pass that the full pile stands, 0 to 1, default 0.1); {@code then} (what follows: {@code "again"} from
 * nothing; {@code "back"}: a pass in which the lights leave as they came; {@code "through"}: a pass in which they leave
 * one by one through the ground; {@code "stay"}); those of {@link Motion}.
 */
public final class Pile implements Effect {
    static final PaletteSetting PALETTE =
            PaletteSetting.of("palette", "colours from the ground up, or from the first light to the last", "white");
    static final ChoiceSetting ALONG = ChoiceSetting.of(
            "along", "whether the palette lies along the order or each light brings its colour", "order", "light");
    static final NumberSetting LIGHTS = NumberSetting.whole("lights", "lights", 1, 1000, 12, "how many lights fill it");
    static final ChoiceSetting STEADY = ChoiceSetting.of(
            "steady", "what all lights share: their speed, or the time that each takes", "speed", "time");
    static final TextSetting EASING = Easings.setting("linear", "how each light runs");
    static final ChoiceSetting GROUND =
            ChoiceSetting.of("ground", "at which end of the order the pile stands", "start", "end");
    static final NumberSetting HOLD =
            NumberSetting.of("hold", "share of the pass", 0, 1, 0.1, "how long the full pile stands");
    static final ChoiceSetting THEN = ChoiceSetting.of(
            "then",
            "what follows the full pile: another one from nothing, a pass in which the lights leave as they came or"
                    + " through the ground, or nothing more",
            "again",
            "back",
            "through",
            "stay");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(PALETTE, ALONG, LIGHTS, STEADY, EASING, GROUND, HOLD, THEN), Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Pile() {}

    @Override
    public String name() {
        return "pile";
    }

    @Override
    public String summary() {
        return "lights arriving one by one and staying";
    }

    @Override
    public String formula() {
        return "light m of L runs from the far end of the order to its place [m / L, (m + 1) / L), all at one speed or in"
                + " one time; a pass fills the order, the last share hold of it stands; a pixel is as bright as the"
                + " share of its step that is lit";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public boolean usesOrder() {
        return true;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Passing passing = Passing.of(settings);
        PileRule rule = PileRule.of(settings);
        PileSteps steps = PileSteps.of(canvas, settings.value(GROUND).equals("end"));
        PaletteDial palette = PaletteDial.of(settings, PALETTE);
        boolean byLight = settings.value(ALONG).equals("light");
        Dial lights = Dial.of(settings, LIGHTS);
        return () -> {
            Ramp ramp = palette.open();
            return new PileBrush(
                    steps,
                    passing,
                    rule,
                    lights,
                    ramp,
                    byLight ? new LightColors(steps, ramp) : new OrderColors(steps, ramp));
        };
    }
}
