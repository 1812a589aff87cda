package org.duskloom.effects.swell;

import java.util.List;
import java.util.Locale;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * Which colour a pulse has. Immutable.
 *
 * @param palette the palette
 * @param along where in the palette
 * @param stops the places of its stops, at all times
 */
record SwellColors(PaletteDial palette, Along along, List<Double> stops) {
    /** Where in the palette a pulse takes its colour from. */
    enum Along {
        PASS,
        LEVEL,
        TURN
    }

    /**
     * What the settings say.
     *
     * @throws SettingException if the stops take turns but not all palettes have them at the same places
     */
    static SwellColors of(Settings settings) throws SettingException {
        PaletteTrack track = settings.value(Swell.PALETTE);
        Along along = Along.valueOf(settings.value(Swell.ALONG).toUpperCase(Locale.ROOT));
        List<Double> stops = positions(track.first());
        if (along == Along.TURN
                && !track.palettes().stream()
                        .allMatch(palette -> positions(palette).equals(stops))) {
            throw new SettingException(
                    "palette",
                    "the palettes of the keys do not have their colours at the same places, so these cannot take turns",
                    "give each as many colours as the others");
        }
        return new SwellColors(PaletteDial.of(track), along, stops);
    }

    private static List<Double> positions(Palette palette) {
        return palette.stops().stream().map(PaletteStop::position).toList();
    }

    /** The ramp for one thread. */
    Ramp open() {
        return palette.open();
    }

    /** The place in the palette, in [0, 1]. */
    float place(double wholePasses, double passed, double level) {
        return switch (along) {
            case PASS -> (float) passed;
            case LEVEL -> (float) level;
            case TURN ->
                stops.get(Math.floorMod((long) wholePasses, stops.size())).floatValue();
        };
    }
}
