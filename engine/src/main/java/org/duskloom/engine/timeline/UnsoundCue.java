package org.duskloom.engine.timeline;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.ExactTime;

/**
 * What could be read of a cue that has errors, so that its addresses, its effect and its settings can be checked in the
 * same run. It is never played.
 *
 * @param standIn the cue; what could not be read is as if it were not written, and its times mean nothing
 * @param namesEffect whether its effect could be read; the stand-in's is empty if not
 * @param canBePrepared whether all that its effect is prepared from could be read, so that what the effect says is true
 */
public record UnsoundCue(Cue standIn, boolean namesEffect, boolean canBePrepared) {
    public UnsoundCue {
        Objects.requireNonNull(standIn, "standIn");
    }

    /** A cue that lasts from the start to the end of everything. */
    static Cue standIn(
            Location location,
            ExactTime end,
            List<TextNode> on,
            TextNode effect,
            List<Field> with,
            Layout layout,
            Optional<Node> opacity) {
        return new Cue(
                location,
                "",
                "",
                ExactTime.ZERO,
                end,
                end,
                on,
                effect,
                with,
                List.of(),
                layout,
                Fade.NONE,
                opacity,
                BlendMode.NORMAL);
    }
}
