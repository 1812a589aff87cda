package org.duskloom.effects.morph;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Easings;
import org.duskloom.effects.kit.Motion;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;
import org.duskloom.engine.time.Easing;

/**
 * How far on its way a dot is. In each pass it goes once from start to end; with {@code back}, there in the first half
 * of the pass and back in the second. A reversed pass begins at the end. Immutable.
 */
final class Way {
    static final TextSetting EASING = Easings.setting("ease-in-out", "how the dots set off and arrive");

    static final FlagSetting BACK = FlagSetting.of("back", "goes there and back in each pass");

    /** The settings, in the order of the reference. */
    static final List<Setting<?>> SETTINGS = Stream.concat(Stream.of(EASING, BACK), Motion.SETTINGS.stream())
            .<Setting<?>>map(setting -> setting)
            .toList();

    private final Motion motion;
    private final boolean back;
    private final Easing easing;

    private Way(Motion motion, boolean back, Easing easing) {
        this.motion = motion;
        this.back = back;
        this.easing = easing;
    }

    /**
     * The way that the settings describe.
     *
     * @throws SettingException if the easing is none, or if the motion is not possible
     */
    static Way of(Settings settings) throws SettingException {
        return new Way(Motion.of(settings), settings.value(BACK), Easings.of(settings, EASING));
    }

    /** 0 at the start, 1 at the end; beyond them where the easing goes beyond. */
    double progress(CueTime time) {
        double pass = motion.passed(time);
        return easing.at(back ? 1 - Math.abs(2 * pass - 1) : pass);
    }
}
