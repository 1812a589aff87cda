package org.duskloom.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.preview.CueMoments;
import org.duskloom.engine.preview.ShownMoment;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Layer;
import org.duskloom.engine.timeline.Timeline;

/** The cues of a show as a picture of moments needs them. */
record SeenCues(Timeline timeline) {
    /** A moment of each cue that is seen in some frames; of a cue that is repeated, of its first play there. */
    List<ShownMoment> moments(FrameList frames, int most) {
        List<CueMoments.Seen> seen = new ArrayList<>();
        for (Layer layer : timeline.layers()) {
            Set<Location> shown = new HashSet<>();
            for (Cue cue : layer.cues()) {
                FrameSpan span = FrameSpan.of(timeline.rate(), cue.at(), cue.seenUntil());
                boolean isSeen = !span.isEmpty()
                        && span.firstFrame() <= frames.last()
                        && span.endFrameExclusive() > frames.first();
                if (isSeen && shown.add(cue.location())) {
                    seen.add(new CueMoments.Seen(span, caption(layer, cue)));
                }
            }
        }
        return CueMoments.of(seen, frames, most);
    }

    private static String caption(Layer layer, Cue cue) {
        if (!cue.name().isEmpty()) {
            return cue.name();
        }
        String effect = cue.effect().value();
        return layer.name().isEmpty() ? effect : layer.name() + ": " + effect;
    }

    /**
     * The frames of the cue of that name, from its first play to its last.
     *
     * @throws MisuseException if no cue has that name, or none of its frames is in the show
     */
    FrameSpan span(String name) {
        Set<String> names = new LinkedHashSet<>();
        FrameSpan all = null;
        for (Layer layer : timeline.layers()) {
            for (Cue cue : layer.cues()) {
                names.add(cue.name());
                if (cue.name().equals(name)) {
                    FrameSpan span = FrameSpan.of(timeline.rate(), cue.at(), cue.seenUntil());
                    all = all == null ? span : hull(all, span);
                }
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

    private static FrameSpan hull(FrameSpan a, FrameSpan b) {
        return new FrameSpan(
                Math.min(a.firstFrame(), b.firstFrame()), Math.max(a.endFrameExclusive(), b.endFrameExclusive()));
    }
}
