package org.duskloom.engine.timeline;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.ExactTime;

/**
 * A scene, from a time, for a time: as written. What the scene holds is cut where this ends.
 *
 * @param location where it opens
 * @param name what it is called; empty where it has no name
 * @param randomKey what tells the random choices of this play from those of others
 * @param at its start, from which the times in the scene count
 * @param end its end, which is no longer part of it
 * @param seenUntil where it is cut off if that is before its end, else its end
 * @param scene the scene's name
 * @param on what is played on instead of what the scene names
 * @param stagger how the starts are spread over the members of what it is played on: each plays the scene by itself
 * @param fade how the whole comes and goes
 * @param opacity of the whole
 * @param blend how the whole is mixed with what was painted in the layer before it
 */
public record SceneCue(
        Location location,
        String name,
        String randomKey,
        ExactTime at,
        ExactTime end,
        ExactTime seenUntil,
        TextNode scene,
        List<Instead> on,
        Optional<Stagger> stagger,
        Fade fade,
        Optional<Node> opacity,
        BlendMode blend)
        implements Played {
    public SceneCue {
        Objects.requireNonNull(location, "location");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(randomKey, "randomKey");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(seenUntil, "seenUntil");
        Objects.requireNonNull(scene, "scene");
        on = List.copyOf(on);
        Objects.requireNonNull(stagger, "stagger");
        Objects.requireNonNull(fade, "fade");
        Objects.requireNonNull(opacity, "opacity");
        Objects.requireNonNull(blend, "blend");
    }

    /**
     * What a name in the scene stands for in this play.
     *
     * @param name the first name of addresses in the scene
     * @param location where it is written
     * @param addresses what is played on, at least one
     */
    public record Instead(String name, Location location, List<TextNode> addresses) {
        public Instead {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(location, "location");
            addresses = List.copyOf(addresses);
        }
    }

    /** The same so much later, cut off where what it stands in is. */
    public SceneCue moved(ExactTime shift, ExactTime cut) {
        Plays.Times times = new Plays.Times(at.plus(shift), end.plus(shift));
        return again(randomKey, times, Played.earlier(seenUntil.plus(shift), cut), fade);
    }

    /** Another play of it at its own time, with random choices of its own. */
    SceneCue repeated(int play, Plays.Times times, ExactTime cut, Fade own) {
        String key = play == 0 ? randomKey : randomKey + "#" + play;
        return again(key, times, Played.earlier(times.end(), cut), own);
    }

    private SceneCue again(String key, Plays.Times times, ExactTime seen, Fade own) {
        return new SceneCue(
                location, name, key, times.at(), times.end(), seen, scene, on, stagger, own, opacity, blend);
    }
}
