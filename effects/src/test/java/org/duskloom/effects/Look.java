package org.duskloom.effects;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.CssColor;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ColorKey;
import org.duskloom.engine.effect.ColorSetting;
import org.duskloom.engine.effect.ColorTrack;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.PaletteKey;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.Easing;

/** An installed effect and what is set of it, by the words of a timeline. */
public final class Look {
    private static final EffectRegistry INSTALLED = EffectRegistry.installed();

    private final Effect effect;
    private final Map<Setting<?>, Object> given = new LinkedHashMap<>();

    private Look(Effect effect) {
        this.effect = effect;
    }

    /** The effect with this name, with nothing set but what it cannot do without. */
    public static Look of(String name) {
        return new Look(INSTALLED.find(name).orElseThrow())
                .withIfThere("file", Optional.of(AnimationFile.path()))
                .withIfThere("text", "Midsummer")
                .betweenHalves();
    }

    private Look betweenHalves() {
        boolean needsParts = effect.settings().stream()
                .anyMatch(setting ->
                        setting instanceof TextSetting && setting.unit().equals("part"));
        return needsParts ? with("from", "first-half").with("to", "second-half") : this;
    }

    /** Sets any setting to a value of its type. */
    public Look with(String name, Object value) {
        given.put(setting(name), value instanceof Palette palette ? PaletteTrack.constant(palette) : value);
        return this;
    }

    /** Sets a number. */
    public Look with(String name, double value) {
        return with(name, (Object) NumberTrack.constant(value));
    }

    /** Lets a number move straight from one value at 0 s to another at some second. */
    public Look moving(String name, double from, double to, double second) {
        return with(
                name,
                NumberTrack.keyed(List.of(new NumberKey(0, from, linear()), new NumberKey(second, to, linear()))));
    }

    /** Sets a time in seconds. */
    public Look seconds(String name, double value) {
        return with(name, (Object) Optional.of(Period.ofSeconds(value)));
    }

    /** Sets a flag. */
    public Look flag(String name) {
        return with(name, (Object) true);
    }

    /** Sets the palette to colours spread evenly, mixed in linear light. */
    public Look palette(String... colors) {
        return with("palette", evenly(ColorMix.LINEAR, colors));
    }

    /** Leaves a setting as it is. */
    public Look without(String name) {
        given.remove(setting(name));
        return this;
    }

    /** Sets a setting if the effect has it. */
    public Look withIfThere(String name, Object value) {
        return has(name) ? with(name, value) : this;
    }

    /** Sets a number if the effect has it. */
    public Look withIfThere(String name, double value) {
        return has(name) ? with(name, value) : this;
    }

    /** Sets a flag if the effect has it. */
    public Look flagIfThere(String name) {
        return has(name) ? flag(name) : this;
    }

    /**
     * Lets every number but those that cannot move within 3 seconds, from the least allowed (at least -3) to the most
     * (5).
     */
    public Look movingAll() {
        for (Setting<?> setting : effect.settings()) {
            if (setting instanceof NumberSetting number && number.moves()) {
                moving(number.name(), Math.max(-3, number.min()), Math.min(5, number.max()), 3);
            }
        }
        return this;
    }

    /** Lets every palette go, within 3 seconds, from one to another and on to a third. */
    public Look movingPalettes(Palette from, Palette to, Palette last) {
        PaletteTrack track = PaletteTrack.keyed(
                List.of(
                        new PaletteKey(0, from, linear()),
                        new PaletteKey(1, to, Easing.EASE_IN_OUT),
                        new PaletteKey(3, last, linear())),
                ColorMix.OKLAB);
        for (Setting<?> setting : effect.settings()) {
            if (setting instanceof PaletteSetting) {
                given.put(setting, track);
            }
        }
        return has("outline") ? with("thickness", 1) : this;
    }

    /** Lets every colour that is no palette move; in an effect without one, the palettes. */
    public Look movingColors(LinearColor from, LinearColor to) {
        boolean anyColor = false;
        for (Setting<?> setting : effect.settings()) {
            if (setting instanceof ColorSetting) {
                anyColor = true;
                given.put(
                        setting,
                        ColorTrack.keyed(
                                List.of(new ColorKey(0, from, linear()), new ColorKey(3, to, linear())),
                                ColorMix.OKLCH));
            }
        }
        Palette fromOnly = Palette.evenly(List.of(from), ColorMix.OKLAB);
        Palette toOnly = Palette.evenly(List.of(to), ColorMix.OKLAB);
        return anyColor ? this : movingPalettes(fromOnly, toOnly, fromOnly);
    }

    /** The compiled effect. */
    public Kernel on(Canvas canvas) throws SettingException {
        return effect.prepare(Settings.of(given), canvas);
    }

    /** A palette of CSS colours spread evenly. */
    public static Palette evenly(ColorMix mix, String... colors) {
        return Palette.evenly(Arrays.stream(colors).map(Look::color).toList(), mix);
    }

    /** A CSS colour. */
    public static LinearColor color(String text) {
        try {
            return CssColor.parse(text);
        } catch (TextFormatException e) {
            throw new AssertionError(e);
        }
    }

    /** An easing that eases nothing. */
    public static Easing linear() {
        try {
            return Easing.parse("linear");
        } catch (TextFormatException e) {
            throw new AssertionError(e);
        }
    }

    private boolean has(String name) {
        return effect.settings().stream().anyMatch(setting -> setting.name().equals(name));
    }

    private Setting<?> setting(String name) {
        return effect.settings().stream()
                .filter(setting -> setting.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no setting " + name));
    }
}
