package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.map.PixelMap;

/** The files that a show of one's own begins with: texts beside the program's classes, filled in for the user. */
final class StartFiles {
    private static final String TITLE_OF_TEXT = "\"First evening\"";
    private static final Pattern MARK = Pattern.compile("@([A-Z]+)@");
    private static final int MOST_IN_TURN = 12;
    private static final int SECONDS_EACH = 4;
    private static final int SECONDS_OF_ALL = 6;

    private StartFiles() {}

    /** A display to be changed. */
    static String display() {
        return text("display.json");
    }

    /** A show on that display. */
    static String show(String title) {
        return text("show.json").replace(TITLE_OF_TEXT, JsonText.quoted(title));
    }

    /**
     * A show on a map.
     *
     * @param mapFile the name of the map, as seen from the show
     */
    static String show(String title, String mapFile, PixelMap map) {
        FoundGroups found = new FoundGroups(map);
        List<FoundGroups.Found> inTurn =
                found.inTurn().stream().limit(MOST_IN_TURN).toList();
        List<FoundGroups.Found> groups = new ArrayList<>(List.of(found.everything()));
        inTurn.stream().filter(FoundGroups.Found::isGroup).forEach(groups::add);
        String cues =
                inTurn.stream().map(each -> cue(each, inTurn.indexOf(each))).collect(Collectors.joining(",\n"));
        Map<String, String> byMark = Map.of(
                "SECONDS", String.valueOf(SECONDS_EACH * inTurn.size() + SECONDS_OF_ALL),
                "EVERYTHING", JsonText.quoted(found.everything().name()),
                "CUES", cues + ",",
                "GROUPS", groups.stream().map(StartFiles::group).collect(Collectors.joining(",\n")),
                "MAP", JsonText.quoted(mapFile),
                "TITLE", JsonText.quoted(title));
        // In one go: what is the user's may look like a mark.
        return MARK.matcher(text("map-show.json"))
                .replaceAll(mark -> Matcher.quoteReplacement(byMark.get(mark.group(1))));
    }

    private static String group(FoundGroups.Found group) {
        return "    " + JsonText.quoted(group.name()) + ": "
                + JsonText.list(group.addresses().toArray()).json();
    }

    /** The first one says what to try; on each member of a group the light runs by itself. */
    private static String cue(FoundGroups.Found on, int index) {
        String at = index == 0 ? "0s" : "+0s";
        String remark =
                index == 0 ? "      // A light that runs along the wire. Try \"heads\": 3 for three of them.\n" : "";
        return remark + "      {\"at\": \"" + at + "\", \"for\": \"" + SECONDS_EACH + "s\", \"on\": "
                + JsonText.quoted(on.name())
                + (on.isGroup() ? ", \"spread\": \"each\"" : "")
                + ", \"effect\": \"chase\", \"with\": {\"palette\": \"pollen\", \"tail\": 0.6, \"every\": \"2s\"}}";
    }

    private static String text(String name) {
        return ProgramText.of("start/" + name);
    }
}
