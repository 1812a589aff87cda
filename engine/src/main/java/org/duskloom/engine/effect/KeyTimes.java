package org.duskloom.engine.effect;

/** Looks a time up among the times of keys. */
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
}
