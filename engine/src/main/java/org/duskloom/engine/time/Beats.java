package org.duskloom.engine.time;

import java.math.BigInteger;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Where the beats of a piece of music lie, and which of them start a bar. Beats are numbered from 0. Between two of
 * them is counted evenly; before the first and beyond the last it goes on with the first and the last interval. Bars
 * are counted from the first one in the same way, over the beats. All places are exact, to 10^-12 seconds. Immutable.
 */
public final class Beats {
    private final List<ExactTime> beats;
    private final List<Integer> bars;
    private final Ratio[] beatSeconds;
    private final Ratio[] barBeats;
    private final boolean even;

    private Beats(List<ExactTime> beats, List<Integer> bars) {
        this.beats = List.copyOf(beats);
        this.bars = List.copyOf(bars);
        beatSeconds = beats.stream().map(Ratio::of).toArray(Ratio[]::new);
        barBeats = bars.stream().map(Ratio::of).toArray(Ratio[]::new);
        even = isRising(beatSeconds) && isEven(beatSeconds) && isEven(barBeats);
        if (beats.size() < 2 || bars.size() == 1 || !isRising(beatSeconds) || !isRising(barBeats)) {
            throw new IllegalArgumentException("beats at " + beats + ", bars from beats " + bars);
        }
    }

    /**
     * Beats that never change.
     *
     * @param first when beat 0 is, which starts a bar
     * @param beatsInBar how many beats a bar has; above 0
     */
    public static Beats steady(Tempo tempo, ExactTime first, int beatsInBar) {
        return new Beats(List.of(first, first.plus(tempo.beat())), List.of(0, beatsInBar));
    }

    /**
     * Beats one by one.
     *
     * @param beats when they are, rising; two at least
     * @param bars the numbers of the beats that start a bar, rising; none if that is not known, else two at least
     */
    public static Beats at(List<ExactTime> beats, List<Integer> bars) {
        return new Beats(beats, bars);
    }

    /** The beats that are known one by one; between and beyond them is counted on. */
    public List<ExactTime> known() {
        return beats;
    }

    /** The numbers of the beats that are known to start a bar. */
    public List<Integer> bars() {
        return bars;
    }

    /** Whether bars can be counted. */
    public boolean hasBars() {
        return !bars.isEmpty();
    }

    /** Whether so many beats or bars last as long wherever they start. */
    public boolean isEven() {
        return even;
    }

    /** When a place is, counted from the first beat or bar. */
    public ExactTime timeOf(Pulse pulse, Ratio place) {
        Ratio beat = pulse == Pulse.BEAT ? place : valueAt(barBeats, place);
        return valueAt(beatSeconds, Objects.requireNonNull(beat)).seconds();
    }

    /** Which place an instant is, counted from the first beat or bar. */
    public Ratio placeOf(Pulse pulse, ExactTime instant) {
        Ratio beat = placeOf(beatSeconds, Ratio.of(instant));
        return pulse == Pulse.BEAT ? beat : placeOf(barBeats, beat);
    }

    /**
     * The instant so many beats or bars after another.
     *
     * @param count below zero for an instant before it
     */
    public ExactTime later(ExactTime from, Pulse pulse, Ratio count) {
        return count.equals(Ratio.ZERO)
                ? from
                : timeOf(pulse, placeOf(pulse, from).plus(count));
    }

    /** What stands at a place among values that are counted evenly between each other and beyond. */
    private static Ratio valueAt(Ratio[] values, Ratio place) {
        int last = values.length - 2;
        BigInteger floor = place.floor().max(BigInteger.ZERO).min(BigInteger.valueOf(last));
        int from = floor.intValueExact();
        Ratio share = place.minus(Ratio.of(from));
        return values[from].plus(share.times(values[from + 1].minus(values[from])));
    }

    private static Ratio placeOf(Ratio[] values, Ratio value) {
        int low = 0;
        int high = values.length - 2;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (values[middle].compareTo(value) <= 0) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return Ratio.of(low).plus(value.minus(values[low]).over(values[low + 1].minus(values[low])));
    }

    private static boolean isRising(Ratio[] values) {
        return IntStream.range(1, values.length).allMatch(i -> values[i].compareTo(values[i - 1]) > 0);
    }

    private static boolean isEven(Ratio[] values) {
        return IntStream.range(2, values.length)
                .allMatch(i -> values[i].minus(values[i - 1]).equals(values[1].minus(values[0])));
    }
}
