package org.duskloom.effects.morph;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;
import org.duskloom.engine.problem.NearestName;

/** The pixels of a part that a setting names, member by member. */
final class Parts {
    private Parts() {}

    /**
     * Finds the part in each of some members.
     *
     * @return canvas pixels of each, in the order of the part
     * @throws SettingException if no part is named, or if a member has none of that name
     */
    static List<int[]> of(Canvas canvas, int[] members, Settings settings, TextSetting setting)
            throws SettingException {
        String name = settings.value(setting);
        List<int[]> found = new ArrayList<>();
        int lacking = 0;
        int oneLacking = 0;
        for (int member : members) {
            int[] pixels =
                    name.isBlank() ? new int[0] : canvas.part(member, name).orElse(new int[0]);
            found.add(pixels);
            if (pixels.length == 0) {
                oneLacking = lacking++ == 0 ? member : oneLacking;
            }
        }
        if (lacking > 0) {
            List<String> known = canvas.knownParts(oneLacking);
            throw new SettingException(
                    setting.name(), message(name, setting, lacking, members.length), NearestName.hint(name, known));
        }
        return found;
    }

    private static String message(String name, TextSetting setting, int lacking, int of) {
        if (name.isBlank()) {
            return "\"" + setting.name() + "\" must name a part";
        }
        String who = of == 1 ? "there is no part " : lacking + " of " + of + " members have no part ";
        return who + "\"" + name.replaceAll("\\p{Cntrl}", "?") + "\"";
    }
}
