package org.duskloom.effects.bench;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.Look;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteKey;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Setting;

/**
 * An effect of which one setting moves, or all its palettes, by a name such as {@code drift.scale} or {@code
 * drift.palettes}; by the effect's name alone nothing moves. Numbers go from half of what they usually are to one and a
 * half times that; where this is 0, from 0 to 1, or to 360 degrees. Palettes go from three colours to two others.
 */
final class MovingLook {
    /** How long the setting moves, in seconds. */
    static final double SECONDS = 30;

    private static final String PALETTES = "palettes";

    private MovingLook() {}

    /** The names of a sweep that stays, and of every setting that moves of all installed effects. */
    static String[] names() {
        EffectRegistry installed = EffectRegistry.installed();
        Stream<String> moving = installed.names().stream()
                .flatMap(name -> installed.find(name).orElseThrow().settings().stream()
                        .filter(setting -> setting.moves())
                        .filter(setting -> setting instanceof NumberSetting || isPalette(setting))
                        .map(setting -> name + "." + (isPalette(setting) ? PALETTES : setting.name())));
        return Stream.concat(Stream.of("sweep"), moving).distinct().toArray(String[]::new);
    }

    private static boolean isPalette(Setting<?> setting) {
        return setting instanceof PaletteSetting;
    }

    /** The effect of that name, with a palette of two colours where it has one, and bands with soft edges. */
    static Look of(String name) {
        String[] parts = name.split("\\.", 2);
        Look look = Look.of(parts[0]).withIfThere("width", 0.5).withIfThere("soft", 0.25);
        look.withIfThere("palette", Look.evenly(ColorMix.OKLAB, "#2a4bd0", "#ff9e5e"));
        if (parts.length == 1) {
            return look;
        }
        for (Setting<?> setting : settings(parts[0])) {
            if (setting instanceof NumberSetting number && number.name().equals(parts[1])) {
                move(look, number);
            } else if (isPalette(setting) && parts[1].equals(PALETTES)) {
                look.with(setting.name(), palettes());
                outline(look, setting.name());
            }
        }
        return look;
    }

    /** An outline says nothing without a thickness. */
    private static void outline(Look look, String palette) {
        if (palette.equals("outline")) {
            look.with("thickness", 1);
        }
    }

    private static List<Setting<?>> settings(String effect) {
        return EffectRegistry.installed().find(effect).orElseThrow().settings();
    }

    private static void move(Look look, NumberSetting number) {
        double usual = number.standard().first();
        double from = usual == 0 ? 0 : usual / 2;
        double unit = number.unit().equals("degrees") ? 360 : 1;
        double to = usual == 0 ? unit : usual * 1.5;
        look.moving(number.name(), Math.max(number.min(), from), Math.min(number.max(), to), SECONDS);
    }

    private static PaletteTrack palettes() {
        Palette first = Look.evenly(ColorMix.OKLAB, "#2a4bd0", "#7b3fa0", "#ff9e5e");
        Palette last = Look.evenly(ColorMix.OKLAB, "gold", "teal");
        return PaletteTrack.keyed(
                List.of(new PaletteKey(0, first, Look.linear()), new PaletteKey(SECONDS, last, Look.linear())),
                ColorMix.OKLAB);
    }
}
