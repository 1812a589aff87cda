package org.duskloom.engine.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.group.Member;

/** What the names in a play of a scene stand for. Equal to itself only. */
final class SceneNames {
    /** Nothing but the names of the display. */
    static final SceneNames NONE = new SceneNames(Map.of());

    private final Map<String, List<Member>> members;

    private SceneNames(Map<String, List<Member>> members) {
        this.members = Map.copyOf(members);
    }

    Map<String, List<Member>> members() {
        return members;
    }

    /** These, with others in their place where both have a name. */
    SceneNames with(Map<String, List<Member>> others) {
        Map<String, List<Member>> all = new HashMap<>(members);
        all.putAll(others);
        return new SceneNames(all);
    }
}
