package org.duskloom.engine.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Stagger;
import org.duskloom.engine.timeline.StaggerBy;

/**
 * Warns of what mostly is a slip in how a cue is laid over its members: of each once for a cue as written, however
 * often and on whatever it is played.
 */
final class LayoutDoubts {
    private final PixelMap map;
    private final Problems problems;
    private final Set<Told> told = new HashSet<>();

    /** What a doubt is about, and where it is written. */
    private record Told(String about, Location location) {}

    LayoutDoubts(PixelMap map, Problems problems) {
        this.map = map;
        this.problems = problems;
    }

    void warn(Cue play, CueGeometry geometry) {
        warnOfUndirectedMembers(play, geometry);
        play.layout().stagger().ifPresent(stagger -> {
            warnOfOneStep(stagger, geometry);
            warnOfLateMembers(play, stagger, geometry);
        });
    }

    private boolean isNew(String about, Location location) {
        return told.add(new Told(about, location));
    }

    private void warnOfUndirectedMembers(Cue play, CueGeometry geometry) {
        List<Member> undirected = geometry.undirected();
        if (!undirected.isEmpty() && isNew("axes", play.layout().axesLocation())) {
            problems.warn(
                    play.layout().axesLocation(),
                    "\"axes\" is \"outward\", but the middle of " + undirected.size() + " of the "
                            + geometry.members().size()
                            + " members is that of its prop, so they keep the prop's own axes: "
                            + Quoted.few(undirected.stream().map(Member::name).toList()),
                    "name parts that lie about the middle" + example(undirected.get(0)));
        }
    }

    private void warnOfOneStep(Stagger stagger, CueGeometry geometry) {
        boolean together = geometry.areas().stream().allMatch(area -> area.lag().isZero());
        if (!together
                || stagger.time().isZero()
                || geometry.members().size() == 1
                || stagger.by() != StaggerBy.PART && stagger.by() != StaggerBy.PROP
                || !isNew("one step", stagger.location())) {
            return;
        }
        if (stagger.by() == StaggerBy.PART) {
            problems.warn(
                    stagger.location(),
                    "\"stagger\" is by \"part\", but no member is another part than the first: all start together",
                    "name several parts" + example(geometry.members().get(0)));
        }
        if (stagger.by() == StaggerBy.PROP) {
            problems.warn(
                    stagger.location(),
                    "\"stagger\" is by \"prop\", but all members are of one prop: all start together",
                    "by \"members\" they follow each other");
        }
    }

    /** Parts of the member's prop, those that stand beside each other if there are any. */
    private String example(Member member) {
        String prop = map.props().get(member.propIndex()).name();
        List<String> paths = map.props().get(member.propIndex()).partPaths();
        Optional<String> inner = paths.stream()
                .filter(path -> path.contains("/"))
                .findFirst()
                .map(path -> path.substring(0, path.lastIndexOf('/')) + "/*");
        return inner.or(() -> paths.stream().findFirst())
                .map(path -> ", such as " + Quoted.of(prop + "/" + path))
                .orElse("");
    }

    private void warnOfLateMembers(Cue play, Stagger stagger, CueGeometry geometry) {
        List<ExactTime> lags =
                geometry.areas().stream().map(CueGeometry.Area::lag).toList();
        boolean areAllOnTime = lags.stream().allMatch(ExactTime::isZero);
        if (!areAllOnTime && !play.fade().out().isZero() && isNew("fade", play.location())) {
            LateMembers.warn(play, lags, problems);
        }
        List<String> late = geometry.areas().stream()
                .filter(area -> area.lag().compareTo(play.length()) >= 0)
                .flatMap(area -> area.names().stream())
                .toList();
        if (!late.isEmpty() && isNew("late", stagger.location())) {
            LateMembers.warnOfUnplayed(stagger, late, problems);
        }
    }
}
