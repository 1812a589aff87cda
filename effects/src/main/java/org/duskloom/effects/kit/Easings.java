package org.duskloom.effects.kit;

import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.Easing;

/** Easings as settings: the words and functions of W3C CSS Easing. */
public final class Easings {
    private static final int LONGEST = 500;

    private Easings() {}

    /**
     * A setting {@code easing}.
     *
     * @param what the easing is of: {@code "how each light runs"}
     */
    public static TextSetting setting(String standard, String what) {
        String range = "an easing of CSS, such as linear, ease-in or steps(4)";
        return TextSetting.of("easing", "easing", range, standard, LONGEST, what);
    }

    /**
     * What the settings say of it.
     *
     * @throws SettingException if the text is no easing
     */
    public static Easing of(Settings settings, TextSetting setting) throws SettingException {
        try {
            return Easing.parse(settings.value(setting));
        } catch (TextFormatException e) {
            throw new SettingException(setting.name(), e.getMessage(), e.hint());
        }
    }
}
