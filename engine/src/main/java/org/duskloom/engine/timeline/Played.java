package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.ExactTime;

/** What stands in a layer and is played: an effect or a scene. */
public sealed interface Played extends LayerItem permits Cue, SceneCue {
    /** Where it opens. */
    Location location();

    /** What it is called; empty where it has no name. */
    String name();

    /** What its random choices are keyed by, within what it stands in. */
    String randomKey();

    /** Its start. */
    ExactTime at();

    /** Its end, which is no longer part of it. */
    ExactTime end();

    /** Where it is cut off if that is before its end, else its end; its clock and its fades go by the end. */
    ExactTime seenUntil();

    /** How it comes and goes. */
    Fade fade();

    /** 0 to 1, a number or keys, whose times count as those of the fade do; absent means 1. */
    Optional<Node> opacity();

    /** How it is mixed with what was painted in its layer before it. */
    BlendMode blend();

    /** How long it holds; above zero. */
    default ExactTime length() {
        return end().minus(at());
    }

    /** The earlier of the two instants. */
    static ExactTime earlier(ExactTime one, ExactTime other) {
        return one.compareTo(other) < 0 ? one : other;
    }
}
