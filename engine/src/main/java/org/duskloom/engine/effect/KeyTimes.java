package org.duskloom.engine.effect;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;
import org.duskloom.engine.time.Easing;

/** What the tracks have in common: looking a time up among the times of keys, and telling keys apart. */
final class KeyTimes {
    private KeyTimes() {}

    /** The index of the first key after the time; the number of keys if there is none. */
    static int firstAfter(double[] seconds, double second) {
        int next = 0;
        while (next < seconds.length && seconds[next] <= second) {
            next++;
        }
        return next;
    }

    /** How far the time is from the key before {@code next} to that key, 0 to 1. */
    static double share(double[] seconds, int next, double second) {
        return (second - seconds[next - 1]) / (seconds[next] - seconds[next - 1]);
    }

    /**
     * Adds the keys of a track to a fingerprint. Of a single key only its value matters, and the way to the first is
     * never gone.
     */
    static <K> void addKeys(
            FingerprintWriter parts,
            List<K> keys,
            Function<K, ? extends Fingerprinted> value,
            ToDoubleFunction<K> seconds,
            Function<K, Easing> easing,
            ColorMix mix) {
        parts.whole(keys.size()).value(value.apply(keys.get(0)));
        if (keys.size() > 1) {
            parts.text(mix.word()).number(seconds.applyAsDouble(keys.get(0)));
        }
        for (K key : keys.subList(1, keys.size())) {
            parts.number(seconds.applyAsDouble(key)).value(easing.apply(key)).value(value.apply(key));
        }
    }
}
