package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.SceneCue;

/**
 * A cue as it is played, alone or in a scene.
 *
 * @param cue by the clock of the show
 * @param within the cues that play the scenes in which it stands, from the outside in
 * @param keys what its random choices hang on: the path of plays that leads to it, from the outside in
 * @param names what the names in its addresses stand for
 * @param isCut whether a scene ends it before its time
 */
record CuePlay(Cue cue, List<SceneCue> within, List<String> keys, SceneNames names, boolean isCut) {
    CuePlay {
        within = List.copyOf(within);
        keys = List.copyOf(keys);
    }

    /** A cue that stands in a layer of the show. */
    static CuePlay ofShow(Cue cue) {
        return new CuePlay(cue, List.of(), List.of(cue.randomKey()), SceneNames.NONE, false);
    }

    /** The path of plays as one key. */
    String randomKey() {
        return keys.size() == 1 ? keys.get(0) : String.join(" > ", keys);
    }
}
