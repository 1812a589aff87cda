package org.duskloom.engine.timeline;

import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;
import org.duskloom.engine.time.TimeContext;

/**
 * How a cue comes and goes, before it is known when it is played: beats of {@code in} count from its start, those of
 * {@code out} back from its end.
 *
 * @param location where it stands
 * @param times what beats count from
 */
record WrittenFade(Location location, Lapse in, Lapse out, Easing easing, TimeContext times) {
    /** There at once and gone at once. */
    static final WrittenFade NONE =
            new WrittenFade(Location.ofFile(""), Lapse.NONE, Lapse.NONE, Easing.LINEAR, TimeContext.NONE);

    /** Whether it is as long for every play. */
    boolean isFixed() {
        return in.isFixed() && out.isFixed();
    }

    /** Finds what is wrong with the fade of a cue that is not played. */
    void check(OpenCue cue, Problems problems) {
        ExactTime at = cue.start().orElse(ExactTime.ZERO);
        cue.length().ifPresent(length -> over(new Plays.Times(at, at.plus(times.lasting(length, at))), problems));
    }

    /** The fade of a play; an error if that is shorter. */
    Fade over(Plays.Times play, Problems problems) {
        if (this == NONE) {
            return Fade.NONE;
        }
        Fade fade = new Fade(times.lasting(in, play.at()), times.ending(out, play.end()), easing);
        ExactTime both = fade.in().plus(fade.out());
        ExactTime length = play.end().minus(play.at());
        if (both.compareTo(length) > 0) {
            problems.error(location, "the fades take " + both, "the cue lasts " + length);
        }
        return fade;
    }
}
