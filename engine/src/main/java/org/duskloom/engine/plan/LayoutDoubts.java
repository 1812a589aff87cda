package org.duskloom.engine.plan;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Stagger;
import org.duskloom.engine.timeline.StaggerBy;

/** Warns of what mostly is a slip in how a cue is laid over its members. */
final class LayoutDoubts {
    private final Cue play;
    private final CueGeometry geometry;
    private final PixelMap map;
    private final Problems problems;

    LayoutDoubts(Cue play, CueGeometry geometry, PixelMap map, Problems problems) {
        this.play = play;
        this.geometry = geometry;
        this.map = map;
        this.problems = problems;
    }

    void warn() {
        warnOfUndirectedMembers();
        play.layout().stagger().ifPresent(stagger -> {
            warnOfOneStep(stagger);
            warnOfLateMembers(stagger);
        });
    }

    private void warnOfUndirectedMembers() {
        List<Member> undirected = geometry.undirected();
        if (!undirected.isEmpty()) {
            problems.warn(
                    play.layout().axesLocation(),
                    "\"axes\" is \"outward\", but the middle of " + undirected.size() + " of the "
                            + geometry.members().size()
                            + " members is that of its prop, so they keep the prop's own axes: "
                            + Quoted.few(undirected.stream().map(Member::name).toList()),
                    "name parts that lie about the middle" + example(undirected.get(0)));
        }
    }

    private void warnOfOneStep(Stagger stagger) {
        boolean together = geometry.areas().stream().allMatch(area -> area.lag().isZero());
        if (!together || stagger.time().isZero() || geometry.members().size() == 1) {
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

    private void warnOfLateMembers(Stagger stagger) {
        LateMembers.warn(
                play, geometry.areas().stream().map(CueGeometry.Area::lag).toList(), problems);
        List<String> late = geometry.areas().stream()
                .filter(area -> area.lag().compareTo(play.length()) >= 0)
                .flatMap(area -> area.names().stream())
                .toList();
        if (!late.isEmpty()) {
            problems.warn(
                    stagger.location(),
                    late.size() + " of the members would start after the cue has ended: " + Quoted.few(late),
                    "shorten \"stagger\" or lengthen the cue");
        }
    }
}
