package org.duskloom.engine.effect;

import java.util.List;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.time.Easing;

/** A number over the time of a cue. Immutable; asking costs no allocation. */
public final class NumberTrack implements Fingerprinted {
    private final double[] seconds;
    private final double[] values;
    private final Easing[] easings;

    private NumberTrack(double[] seconds, double[] values, Easing[] easings) {
        this.seconds = seconds;
        this.values = values;
        this.easings = easings;
    }

    /** A number that does not move. */
    public static NumberTrack constant(double value) {
        return new NumberTrack(new double[] {0}, new double[] {value}, new Easing[1]);
    }

    /**
     * A number that moves from key to key. Before the first key it has the first value, after the last the last.
     *
     * @param keys at least one, their times not falling; where two stand at the same time the later one holds from
     *     there
     */
    public static NumberTrack keyed(List<NumberKey> keys) {
        if (keys.isEmpty()) {
            throw new IllegalArgumentException("a track needs a key");
        }
        return new NumberTrack(
                keys.stream().mapToDouble(NumberKey::seconds).toArray(),
                keys.stream().mapToDouble(NumberKey::value).toArray(),
                keys.stream().map(NumberKey::easing).toArray(Easing[]::new));
    }

    /** Whether the number is the same at all times. */
    public boolean isConstant() {
        for (double value : values) {
            if (value != values[0]) {
                return false;
            }
        }
        return true;
    }

    /** The number at a time in seconds from the start of the cue. */
    public double at(double second) {
        int next = KeyTimes.firstAfter(seconds, second);
        if (next == 0) {
            return values[0];
        }
        if (next == seconds.length) {
            return values[next - 1];
        }
        double share = easings[next].at(KeyTimes.share(seconds, next, second));
        return values[next - 1] + (values[next] - values[next - 1]) * share;
    }

    /** The number at a time, as a float. */
    public float floatAt(double second) {
        return (float) at(second);
    }

    /** The least and the greatest value at any key: {@code [least, greatest]}. */
    public double[] keyRange() {
        double least = values[0];
        double greatest = values[0];
        for (double value : values) {
            least = Math.min(least, value);
            greatest = Math.max(greatest, value);
        }
        return new double[] {least, greatest};
    }

    /** Keys that all have one value are that value; the way to the first key is never gone. */
    @Override
    public void addTo(FingerprintWriter parts) {
        int keys = isConstant() ? 1 : values.length;
        parts.whole(keys).number(values[0]);
        for (int key = 1; key < keys; key++) {
            parts.number(seconds[key - 1])
                    .number(seconds[key])
                    .number(values[key])
                    .value(easings[key]);
        }
    }
}
