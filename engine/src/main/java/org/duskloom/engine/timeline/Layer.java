package org.duskloom.engine.timeline;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.duskloom.engine.color.BlendMode;

/**
 * Cues that are painted together over the layers before.
 *
 * @param name its name, or its number from 1 where it has none
 * @param blend how it is mixed with what is under it; of no effect for a mask
 * @param opacity 0 to 1
 * @param mask whether its brightness gates the layers under it instead of being seen, where and while it has cues
 * @param parts what is played, in the order of the file; a later one paints over an earlier one
 * @param unsound what could be read of cues that have errors, for further checks
 */
public record Layer(
        String name, BlendMode blend, double opacity, boolean mask, List<LayerItem> parts, List<UnsoundCue> unsound) {
    public Layer {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(blend, "blend");
        parts = List.copyOf(parts);
        unsound = List.copyOf(unsound);
    }

    /** What is played, once for every play. */
    public List<Played> items() {
        return plays().toList();
    }

    private Stream<Played> plays() {
        return parts.stream().flatMap(Layer::plays);
    }

    private static Stream<? extends Played> plays(LayerItem part) {
        return part instanceof EvenPlays plays ? plays.plays().stream() : Stream.of((Played) part);
    }

    /** Those of the items that play an effect. */
    public List<Cue> cues() {
        return plays().filter(Cue.class::isInstance).map(Cue.class::cast).toList();
    }
}
