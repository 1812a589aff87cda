package org.duskloom.engine.effect;

import java.util.List;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.time.Easing;

/** A number over the time of a cue. Immutable; asking costs no allocation. */
public sealed interface NumberTrack extends Fingerprinted permits KeyedNumber, FollowingNumber {
    /** A number that does not move. */
    static NumberTrack constant(double value) {
        return new KeyedNumber(List.of(new NumberKey(0, value, Easing.LINEAR)));
    }

    /**
     * A number that moves from key to key. Before the first key it has the first value, after the last the last.
     *
     * @param keys at least one, their times not falling; where two stand at the same time the later one holds from
     *     there
     */
    static NumberTrack keyed(List<NumberKey> keys) {
        if (keys.isEmpty()) {
            throw new IllegalArgumentException("a track needs a key");
        }
        return new KeyedNumber(keys);
    }

    /**
     * A number that follows a level of the music.
     *
     * @param from its value where the level is 0
     * @param to its value where the level is 1
     */
    static NumberTrack following(LevelCurve curve, double from, double to) {
        return new FollowingNumber(curve, from, to);
    }

    /** Whether the number is the same at all times. */
    boolean isConstant();

    /** Whether it hangs on the beats of the music. */
    boolean hearsBeats();

    /**
     * The number at a time.
     *
     * @param second seconds from the start of the cue
     * @param cueStartSecond when the cue starts: seconds from the start of the show
     */
    double at(double second, double cueStartSecond);

    /** The number at a time of a cue that starts with the show. */
    default double at(double second) {
        return at(second, 0);
    }

    /** The number at the start of a cue, where it hangs on nothing else. */
    double first();

    /** The least and the greatest value at any key, or of what follows: {@code [least, greatest]}. */
    double[] keyRange();
}
