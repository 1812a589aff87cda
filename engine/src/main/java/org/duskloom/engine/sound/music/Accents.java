package org.duskloom.engine.sound.music;

/** Compares every so-manyth value with the others. */
final class Accents {
    private Accents() {}

    /** How much greater every so-manyth value from a first one on is than the others, in standard errors. */
    static double of(double[] values, int length, int first) {
        double on = 0;
        double all = 0;
        double squares = 0;
        int onCount = 0;
        for (int i = 0; i < values.length; i++) {
            boolean starts = i % length == first % length;
            on += starts ? values[i] : 0;
            onCount += starts ? 1 : 0;
            all += values[i];
            squares += values[i] * values[i];
        }
        int offCount = values.length - onCount;
        double mean = values.length == 0 ? 0 : all / values.length;
        double variance = values.length == 0 ? 0 : squares / values.length - mean * mean;
        if (onCount == 0 || offCount == 0 || variance <= 0) {
            return 0;
        }
        double difference = on / onCount - (all - on) / offCount;
        return difference / Math.sqrt(variance * (1.0 / onCount + 1.0 / offCount));
    }
}
