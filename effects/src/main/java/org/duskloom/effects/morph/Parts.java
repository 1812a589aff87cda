package org.duskloom.effects.morph;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.Shown;
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
        List<Integer> lacking = new ArrayList<>();
        for (int member : members) {
            int[] pixels =
                    name.isBlank() ? new int[0] : canvas.part(member, name).orElse(new int[0]);
            found.add(pixels);
            if (pixels.length == 0) {
                lacking.add(member);
            }
        }
        if (!lacking.isEmpty()) {
            List<String> known = canvas.knownParts(lacking.get(0));
            List<String> who = lacking.stream().map(canvas::memberName).toList();
            throw new SettingException(
                    setting.name(), message(name, setting, who, members.length), NearestName.hint(name, known));
        }
        return found;
    }

    private static String message(String name, TextSetting setting, List<String> lacking, int of) {
        if (name.isBlank()) {
            return "\"" + setting.name() + "\" must name a part";
        }
        return of == 1
                ? "there is no part " + Shown.text(name)
                : lacking.size() + " of " + of + " members have no part " + Shown.text(name) + ": "
                        + Shown.names(lacking);
    }
}
