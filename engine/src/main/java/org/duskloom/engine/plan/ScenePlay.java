package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Played;
import org.duskloom.engine.timeline.Scene;
import org.duskloom.engine.timeline.SceneCue;

/**
 * Where cues stand while they are planned: in the show, or in a play of a scene.
 *
 * @param start from which times count, by the clock of the show
 * @param cut where what goes on is cut off
 * @param within the cues that play the scenes around, from the outside in
 * @param keys what random choices hang on, from the outside in
 * @param names what names stand for
 */
record ScenePlay(ExactTime start, ExactTime cut, List<SceneCue> within, List<String> keys, SceneNames names) {
    ScenePlay {
        within = List.copyOf(within);
        keys = List.copyOf(keys);
    }

    /** The show itself. */
    static ScenePlay ofShow(ExactTime end) {
        return new ScenePlay(ExactTime.ZERO, end, List.of(), List.of(), SceneNames.NONE);
    }

    /**
     * A play of a scene in here.
     *
     * @param cue that plays it, by the clock of the show
     * @param lag how much later than the cue it starts
     * @param member of the stagger that plays it by itself; empty if it is played as one
     * @return nothing if it would start when all is over
     */
    Optional<ScenePlay> inner(SceneCue cue, Scene scene, ExactTime lag, String member, SceneNames innerNames) {
        ExactTime at = cue.at().plus(lag);
        ExactTime end = Played.earlier(at.plus(scene.length()), Played.earlier(cue.seenUntil(), cut));
        if (end.compareTo(at) <= 0) {
            return Optional.empty();
        }
        List<String> path = new ArrayList<>(scene.same() ? List.of("scene " + scene.name()) : keys);
        if (!scene.same()) {
            path.add(member.isEmpty() ? cue.randomKey() : cue.randomKey() + " " + member);
        }
        List<SceneCue> around = new ArrayList<>(within);
        around.add(cue);
        return Optional.of(new ScenePlay(at, end, around, path, innerNames));
    }

    /** A cue in here by the clock of the show; nothing if it would start when all is over. */
    Optional<CuePlay> cue(Cue written) {
        if (within.isEmpty()) {
            return Optional.of(CuePlay.ofShow(written));
        }
        if (written.at().plus(start).compareTo(cut) >= 0) {
            return Optional.empty();
        }
        List<String> path = new ArrayList<>(keys);
        path.add(written.randomKey());
        boolean isCut = written.seenUntil().plus(start).compareTo(cut) > 0;
        return Optional.of(new CuePlay(written.moved(start, cut), within, path, names, isCut));
    }

    /** A cue in here that plays a scene, by the clock of the show; nothing if it would start when all is over. */
    Optional<SceneCue> sceneCue(SceneCue written) {
        return written.at().plus(start).compareTo(cut) >= 0 ? Optional.empty() : Optional.of(written.moved(start, cut));
    }
}
