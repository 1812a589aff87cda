package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Played;
import org.duskloom.engine.timeline.Scene;
import org.duskloom.engine.timeline.SceneCue;
import org.duskloom.engine.timeline.Stagger;

/** Warns of members that start so late that their cue ends before they have come to an end, or to a start. */
final class LateMembers {
    private LateMembers() {}

    /**
     * Warns of a fade out that late members never come to: it ends, by each member's clock, when as much time is over
     * as the cue lasts.
     */
    static void warn(Cue cue, List<ExactTime> lags, Problems problems) {
        warnOfFade(cue, lags, problems);
    }

    /** Warns of a staggered scene that members do not play to its end, though nobody said that it is to be cut. */
    static void warn(SceneCue cue, Scene scene, List<Member> members, List<ExactTime> lags, Problems problems) {
        warnOfFade(cue, lags, problems);
        List<String> unplayed = new ArrayList<>();
        for (int k = 0; k < members.size(); k++) {
            if (lags.get(k).compareTo(cue.length()) >= 0) {
                unplayed.add(members.get(k).name());
            }
        }
        warnOfUnplayed(cue.stagger().orElseThrow(), unplayed, problems);
        ExactTime last = latest(cue, lags);
        if (cue.length().equals(scene.length()) && !last.isZero()) {
            problems.warn(
                    cue.stagger().orElseThrow().location(),
                    "members that start later are cut when the cue ends, the last one " + last + " before its end",
                    "let the cue last that much longer: \"for\": \""
                            + scene.length().plus(last) + "\"");
        }
    }

    /** Warns of members whose turn comes when all is over. */
    static void warnOfUnplayed(Stagger stagger, List<String> members, Problems problems) {
        if (!members.isEmpty()) {
            problems.warn(
                    stagger.location(),
                    members.size() + " of the members would start after the cue has ended: " + Quoted.few(members),
                    "shorten \"stagger\" or lengthen the cue");
        }
    }

    private static void warnOfFade(Played cue, List<ExactTime> lags, Problems problems) {
        ExactTime last = latest(cue, lags);
        if (!cue.fade().out().isZero() && !last.isZero()) {
            problems.warn(
                    cue.location(),
                    "with \"stagger\", members that start later are cut before their fade out ends: the last starts "
                            + last + " after the first",
                    "leave \"out\" away and let \"opacity\" fall by keys, which count from the start of each member; let"
                            + " the cue last " + last + " longer than the last key");
        }
    }

    /** The latest start of those members that are seen at all. */
    private static ExactTime latest(Played cue, List<ExactTime> lags) {
        return lags.stream()
                .filter(lag -> lag.compareTo(cue.length()) < 0)
                .max(Comparator.naturalOrder())
                .orElse(ExactTime.ZERO);
    }
}
