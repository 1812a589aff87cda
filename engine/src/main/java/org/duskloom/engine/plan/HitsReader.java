package org.duskloom.engine.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.Hits;
import org.duskloom.engine.effect.HitsSetting;
import org.duskloom.engine.group.Glob;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Pulse;
import org.duskloom.engine.timeline.Timeline;

/** Finds the instants that a setting names: beats, bars, or markers. */
final class HitsReader {
    /** What the name of the end of a marker ends with. */
    private static final String END = ".end";

    private final Timeline timeline;
    private final Optional<FrameBeats> beats;
    private final Problems problems;

    HitsReader(Timeline timeline, Optional<FrameBeats> beats, Problems problems) {
        this.timeline = timeline;
        this.beats = beats;
        this.problems = problems;
    }

    Optional<Hits> read(TextNode written, String what) {
        String name = written.value();
        if (name.equals(HitsSetting.BEAT) || name.equals(HitsSetting.BAR)) {
            return pulse(written, what, name.equals(HitsSetting.BAR) ? Pulse.BAR : Pulse.BEAT);
        }
        List<ExactTime> instants = timeline.markers().entrySet().stream()
                .filter(marker -> isMeant(name, marker.getKey()))
                .map(Map.Entry::getValue)
                .sorted()
                .distinct()
                .toList();
        if (instants.isEmpty()) {
            refuse(written, what);
            return Optional.empty();
        }
        return Optional.of(new MarkerHits(instants, timeline.rate(), beats));
    }

    private void refuse(TextNode written, String what) {
        if (timeline.times().marksFaulty()) {
            return;
        }
        TreeSet<String> allowed = new TreeSet<>(timeline.markers().keySet());
        allowed.addAll(List.of(HitsSetting.BEAT, HitsSetting.BAR));
        problems.error(
                written.location(),
                what + " is " + Quoted.of(written.value()) + ", and there is no marker of that name",
                NearestName.hintOfFree(written.value(), allowed));
    }

    private static boolean isMeant(String pattern, String marker) {
        return Glob.matches(pattern, marker) && (pattern.endsWith(END) || !marker.endsWith(END));
    }

    private Optional<Hits> pulse(TextNode written, String what, Pulse pulse) {
        if (beats.isEmpty() && timeline.times().beatsFaulty()) {
            return Optional.empty();
        }
        if (beats.isEmpty()) {
            problems.error(
                    written.location(),
                    what + " is " + Quoted.of(written.value()) + ", but it is not known where the beats lie",
                    "say it in the timeline: \"beats\": {\"tempo\": 120}, or the name of a label track");
            return Optional.empty();
        }
        if (pulse == Pulse.BAR && !beats.get().beats().hasBars()) {
            problems.error(
                    written.location(),
                    what + " is \"bar\", but it is not known which beats start one",
                    "label the first beat of every bar \"bar\" instead of \"beat\"");
            return Optional.empty();
        }
        return Optional.of(new PulseHits(beats.get(), pulse));
    }
}
