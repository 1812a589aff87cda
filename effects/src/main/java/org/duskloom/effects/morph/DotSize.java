package org.duskloom.effects.morph;

import java.util.List;
import org.duskloom.effects.kit.Dial;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;

/** How far the light of a dot reaches, in spacings of pixels. Immutable. */
final class DotSize {
    static final NumberSetting SIZE = NumberSetting.of(
            "size",
            "spacings",
            0,
            100,
            1,
            "how far a dot's light reaches; 1 is the usual distance of neighbouring pixels");

    static final NumberSetting BULGE =
            NumberSetting.of("bulge", "times", 0, 10, 2, "how many times as far it reaches half way");

    /** The settings, in the order of the reference. */
    static final List<Setting<?>> SETTINGS = List.of(SIZE, BULGE);

    private final Dial size;
    private final Dial bulge;

    private DotSize(Dial size, Dial bulge) {
        this.size = size;
        this.bulge = bulge;
    }

    static DotSize of(Settings settings) {
        return new DotSize(Dial.of(settings, SIZE), Dial.of(settings, BULGE));
    }

    /** The reach at a time, for dots that have come so far; in spacings. */
    double spacings(CueTime time, double progress) {
        double share = Math.min(1, Math.max(0, progress));
        return size.at(time) * (1 + (bulge.at(time) - 1) * 4 * share * (1 - share));
    }

    /** The most that the reach is between some progress and another, both in [0, 1], by the keys of the settings. */
    double mostSpacings(double from, double to) {
        double swelling = bulge.greatestKey() - 1;
        boolean isHalfWayBetween = from <= 0.5 && to >= 0.5;
        double greatest = isHalfWayBetween ? 1 : Math.max(hump(from), hump(to));
        return size.greatestKey() * (1 + swelling * (swelling > 0 ? greatest : Math.min(hump(from), hump(to))));
    }

    /** 0 at both ends of the way, 1 half way. */
    private static double hump(double share) {
        return 4 * share * (1 - share);
    }
}
