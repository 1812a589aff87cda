package org.duskloom.effects.swell;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.Easings;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.HitsSetting;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;

/**
 * The whole thing breathing or hitting. With v = frac(φ), E the easing, clamped to [0, 1], and a, h and d the attack,
 * hold and decay:
 *
 * <pre>
 * e = E(v / a)                where v &lt; a
 *     1                       where v &lt; a + h
 *     E(1 − (v − a − h) / d)  where v &lt; a + h + d
 *     0                       from there on
 * colour = palette · (low + (1 − low) · e)
 * </pre>
 *
 * <p>The palette is taken at v ({@code along: "pass"}), at e ({@code "level"}), or its stops take turns from pass to
 * pass ({@code "turn"}). With {@code reverse} v runs from 1 down to 0, and at an edge the later of its two sides
 * counts. Where a, h and d move and are together more than 1, they are shortened in proportion.
 *
 * <p>With {@code on} a pass starts on each beat, bar or marker of the music, and v is how far it is on the way to the
 * next one, or, with {@code every} or on markers, v = time since then / every; e = 0 where v is 1 or more, and before
 * the first marker.
 *
 * <p>Settings: {@code palette}; {@code along} (default {@code "pass"}); {@code attack}, {@code hold} and {@code decay}
 * (shares of the pass, 0 to 1, default 0.5, 0 and 0.5); {@code easing} (of CSS, default {@code ease-in-out}); {@code
 * low} (level between the swells, 0 to 1, default 0); {@code on} (not set); those of {@link Motion}.
 */
public final class Swell implements Effect {
    static final PaletteSetting PALETTE = PaletteSetting.of("palette", "colours of the swells", "white");
    static final ChoiceSetting ALONG = ChoiceSetting.of(
            "along",
            "whether the palette runs along each pass, follows the level, or its colours take turns from pass to pass",
            "pass",
            "level",
            "turn");
    static final NumberSetting ATTACK =
            NumberSetting.of("attack", "share of the pass", 0, 1, 0.5, "how long the light takes to become bright");
    static final NumberSetting HOLD =
            NumberSetting.of("hold", "share of the pass", 0, 1, 0, "how long the light stays bright");
    static final NumberSetting DECAY =
            NumberSetting.of("decay", "share of the pass", 0, 1, 0.5, "how long the light takes to become dark");
    static final TextSetting EASING = Easings.setting("ease-in-out", "how attack and, mirrored, decay go");
    static final NumberSetting LOW =
            NumberSetting.of("low", "share", 0, 1, 0, "how much light is left between the swells");

    static final HitsSetting ON = HitsSetting.of(
            "on",
            "each swell starts on a beat, on the first beat of a bar, or on a marker, and takes every; on beats and bars, where"
                    + " every is not written, until the next");

    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(PALETTE, ALONG, ATTACK, HOLD, DECAY, EASING, LOW, ON), Motion.SETTINGS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    /** For the service loader. */
    public Swell() {}

    @Override
    public String name() {
        return "swell";
    }

    @Override
    public String summary() {
        return "the whole thing breathing or hitting";
    }

    @Override
    public String formula() {
        return "v = frac(passes gone by); e rises from 0 to 1 over attack, stays over hold, falls over decay, eased;"
                + " palette at v, at e, or stop after stop, times low + (1 - low) * e";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        PulseClock clock = PulseClock.of(settings);
        Envelope envelope = Envelope.of(settings);
        Dial low = Dial.of(settings, LOW);
        SwellColors colors = SwellColors.of(settings);
        return () -> new SwellBrush(clock, envelope, low, colors, colors.open());
    }
}
