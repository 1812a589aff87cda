package org.duskloom.effects.pulse;

import java.util.List;
import java.util.Locale;
import org.duskloom.effects.kit.Ramp;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStop;

/**
 * Which colour a pulse has. Immutable.
 *
 * @param ramp the palette
 * @param along where in the palette
 * @param stops the places of its stops
 */
record PulseColors(Ramp ramp, Along along, List<PaletteStop> stops) {
    /** Where in the palette a pulse takes its colour from. */
    enum Along {
        PASS,
        LEVEL,
        TURN
    }

    static PulseColors of(Palette palette, String along) {
        return new PulseColors(Ramp.of(palette), Along.valueOf(along.toUpperCase(Locale.ROOT)), palette.stops());
    }

    /** The place in the palette, in [0, 1]. */
    float place(double wholePasses, double passed, double level) {
        return switch (along) {
            case PASS -> (float) passed;
            case LEVEL -> (float) level;
            case TURN ->
                (float) stops.get(Math.floorMod((long) wholePasses, stops.size()))
                        .position();
        };
    }
}
