package org.duskloom.engine.sound.music;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is known of a song beforehand.
 *
 * @param slowestBpm beats a minute at least
 * @param fastestBpm beats a minute at most
 * @param firstSeconds when the first beat is, which starts a bar
 * @param barBeats how many beats a bar has
 */
public record Wishes(double slowestBpm, double fastestBpm, OptionalDouble firstSeconds, OptionalInt barBeats) {
    /** No song is slower. */
    public static final double LEAST_BPM = 30;

    /** No song is faster. */
    public static final double MOST_BPM = 300;

    /** Tempos this near to each other are one. */
    private static final double ONE_TEMPO = 1.1;

    /** The slowest and the fastest that are tried unless it is known. */
    private static final double USUAL_SLOWEST_BPM = 48;

    private static final double USUAL_FASTEST_BPM = 215;

    /** Nothing is known. */
    public static final Wishes NONE =
            new Wishes(USUAL_SLOWEST_BPM, USUAL_FASTEST_BPM, OptionalDouble.empty(), OptionalInt.empty());

    /** @throws IllegalArgumentException if a tempo is outside of {@value #LEAST_BPM} to {@value #MOST_BPM} */
    public Wishes {
        if (!(slowestBpm >= LEAST_BPM && slowestBpm <= fastestBpm && fastestBpm <= MOST_BPM)) {
            throw new IllegalArgumentException("a tempo from " + slowestBpm + " to " + fastestBpm);
        }
    }

    /** Whether something is said of where the beats lie, so that there are some. */
    boolean sayThereAreBeats() {
        return firstSeconds.isPresent() || sayTempo();
    }

    /** Whether the tempo is told. */
    boolean sayTempo() {
        return slowestBpm != NONE.slowestBpm || fastestBpm != NONE.fastestBpm;
    }

    /** Whether it is told so narrowly that there is nothing to choose. */
    boolean sayOneTempo() {
        return sayTempo() && fastestBpm <= ONE_TEMPO * slowestBpm;
    }

    /** Whether something is said of the bars. */
    boolean sayBars() {
        return firstSeconds.isPresent() || barBeats.isPresent();
    }

    /** Whether a tempo is inside. */
    boolean allow(double periodSeconds) {
        return within(periodSeconds) == periodSeconds;
    }

    /** The nearest period that is inside. */
    double within(double periodSeconds) {
        return Math.max(60 / fastestBpm, Math.min(60 / slowestBpm, periodSeconds));
    }
}
