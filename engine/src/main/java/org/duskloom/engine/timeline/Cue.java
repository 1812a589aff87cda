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
 * One effect, on some addresses, from a time, for a time: as written, with a look's fields filled in.
 *
 * @param location where the cue opens
 * @param name what it is called; empty where it has no name
 * @param randomKey what its random choices are keyed by, see {@link RandomKeys}; for repeats, by the number of the play
 *     too
 * @param play which play of a repeat it is, counted from 1; 0 where the cue is not repeated
 * @param at its start
 * @param end its end, which is no longer part of it
 * @param seenUntil where it is cut off if that is before its end, else its end; its clock and its fades go by the end
 * @param on the addresses, at least one
 * @param effect the effect's name
 * @param with the settings as written, each once
 * @param changes what a repeat adds in this play to settings that are not written in {@code with}; it is added to their
 *     defaults
 * @param layout how the effect is laid over the members
 * @param fade how it comes and goes
 * @param opacity 0 to 1, a number or keys, whose times count as those of the fade do; absent means 1
 * @param blend how it is mixed with the earlier cues of its layer
 */
public record Cue(
        Location location,
        String name,
        String randomKey,
        int play,
        ExactTime at,
        ExactTime end,
        ExactTime seenUntil,
        List<TextNode> on,
        TextNode effect,
        List<Field> with,
        List<Field> changes,
        Layout layout,
        Fade fade,
        Optional<Node> opacity,
        BlendMode blend)
        implements Played {
    public Cue {
        Objects.requireNonNull(location, "location");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(randomKey, "randomKey");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(seenUntil, "seenUntil");
        on = List.copyOf(on);
        Objects.requireNonNull(effect, "effect");
        with = List.copyOf(with);
        changes = List.copyOf(changes);
        Objects.requireNonNull(layout, "layout");
        Objects.requireNonNull(fade, "fade");
        Objects.requireNonNull(opacity, "opacity");
        Objects.requireNonNull(blend, "blend");
    }

    /** The same so much later, cut off where what it stands in is. */
    public Cue moved(ExactTime shift, ExactTime cut) {
        Plays.Times times = new Plays.Times(at.plus(shift), end.plus(shift));
        return again(randomKey, play, times, Played.earlier(seenUntil.plus(shift), cut), fade, with, changes);
    }

    /**
     * Another play of it: at its own time, with settings and random choices of its own.
     *
     * @param number which, counted from 1; 0 where it is the only one
     * @param cut where it is cut off
     */
    Cue repeated(int number, Plays.Times times, ExactTime cut, Fade own, SettingSteps.Changed settings) {
        String key = number <= 1 ? randomKey : randomKey + "#" + (number - 1);
        return again(key, number, times, Played.earlier(times.end(), cut), own, settings.with(), settings.beside());
    }

    /** The same with the settings that it has itself. */
    Cue repeated(int number, Plays.Times times, ExactTime cut, Fade own) {
        return repeated(number, times, cut, own, new SettingSteps.Changed(with, changes));
    }

    private Cue again(
            String key,
            int number,
            Plays.Times times,
            ExactTime seen,
            Fade own,
            List<Field> settings,
            List<Field> beside) {
        return new Cue(
                location,
                name,
                key,
                number,
                times.at(),
                times.end(),
                seen,
                on,
                effect,
                settings,
                beside,
                layout,
                own,
                opacity,
                blend);
    }
}
