package org.duskloom.engine.effect;

import java.util.List;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.time.Easing;

/** A number that goes from key to key over the time of a cue, or stays. */
final class KeyedNumber implements NumberTrack {
    private final double[] seconds;
    private final double[] values;
    private final Easing[] easings;

    KeyedNumber(List<NumberKey> keys) {
        seconds = keys.stream().mapToDouble(NumberKey::seconds).toArray();
        values = keys.stream().mapToDouble(NumberKey::value).toArray();
        easings = keys.stream().map(NumberKey::easing).toArray(Easing[]::new);
    }

    @Override
    public boolean isConstant() {
        for (double value : values) {
            if (value != values[0]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean hearsBeats() {
        return false;
    }

    @Override
    public double at(double second, double cueStartSecond) {
        if (values.length == 1) {
            return values[0];
        }
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

    @Override
    public double first() {
        return at(0, 0);
    }

    @Override
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
