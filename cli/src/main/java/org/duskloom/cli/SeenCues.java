package org.duskloom.cli;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.preview.CueCaption;
import org.duskloom.engine.preview.CueMoments;
import org.duskloom.engine.preview.ShownMoment;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.render.SeenLight;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Played;
import org.duskloom.engine.timeline.Timeline;

/** The cues of a show as a picture of moments needs them. */
record SeenCues(Timeline timeline, Plan plan) {
    /**
     * A moment of each cue that is seen in some frames; of a cue that is repeated, of its first play there,
     * and of a cue in a scene one for every cue that plays this. Moments in which the cue is covered are avoided.
     *
     * @param pixels those that are looked at; where they are not all, cues of which nothing is seen there are left out
     */
    List<ShownMoment> moments(FrameList frames, BitSet pixels, int most) {
        List<CueMoments.Seen> seen = new ArrayList<>();
        SeenLight light = new SeenLight(plan, pixels);
        for (int i = 0; i < timeline.layers().size(); i++) {
            String layer = timeline.layers().get(i).name();
            Set<List<Location>> shown = new HashSet<>();
            for (PlannedCue cue : plan.layers().get(i).cues()) {
                FrameSpan span = span(cue.cue());
                boolean isSeen = !span.isEmpty()
                        && span.firstFrame() <= frames.last()
                        && span.endFrameExclusive() > frames.first()
                        && cue.isOnOneOf(pixels);
                if (isSeen && shown.add(places(cue))) {
                    seen.add(new CueMoments.Seen(span, CueCaption.of(layer, cue), frame -> light.of(cue, frame)));
                }
            }
        }
        return pixels.cardinality() < plan.pixelCount()
                ? CueMoments.ofVisible(seen, frames, most)
                : CueMoments.of(seen, frames, most);
    }

    private FrameSpan span(Played played) {
        return FrameSpan.of(timeline.rate(), played.at(), played.seenUntil());
    }

    /** Where it is written, and where all that play the scenes round it are. */
    private static List<Location> places(PlannedCue cue) {
        return Stream.concat(cue.within().stream(), Stream.of(cue.cue()))
                .map(Played::location)
                .toList();
    }

    /**
     * The frames of the cue of that name, from its first play to its last.
     *
     * @throws MisuseException if no cue has that name, or none of its frames is in the show
     */
    FrameSpan span(String name) {
        Set<String> names = new LinkedHashSet<>();
        FrameSpan all = null;
        for (Played played : played()) {
            names.add(played.name());
            if (played.name().equals(name)) {
                all = all == null ? span(played) : hull(all, span(played));
            }
        }
        names.remove("");
        if (all == null) {
            String hint = names.isEmpty() ? "give the cue a \"name\"" : NearestName.hint(name, names);
            throw new MisuseException(
                    "--cue: no cue is called " + Quoted.of(name) + (hint.isEmpty() ? "" : "; " + hint));
        }
        if (all.isEmpty()) {
            throw new MisuseException("--cue: no frame of the show lies in the cue " + Quoted.of(name));
        }
        return all;
    }

    /** Every play of every cue, also of those that play scenes. */
    private List<Played> played() {
        List<Played> all = new ArrayList<>();
        plan.layers()
                .forEach(layer -> layer.cues().forEach(cue -> {
                    all.addAll(cue.within());
                    all.add(cue.cue());
                }));
        return all;
    }

    private static FrameSpan hull(FrameSpan a, FrameSpan b) {
        return new FrameSpan(
                Math.min(a.firstFrame(), b.firstFrame()), Math.max(a.endFrameExclusive(), b.endFrameExclusive()));
    }
}
