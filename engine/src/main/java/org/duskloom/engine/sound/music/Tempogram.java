package org.duskloom.engine.sound.music;

/**
 * How well the song repeats after every lag, round every second of it: the autocorrelation of the onset strength over
 * {@value #WINDOW_SECONDS} s, over its value at lag 0.
 */
final class Tempogram {
    static final int WINDOW_SECONDS = 12;

    /** The longest lag: four beats of 50 a minute. */
    private static final double LONGEST_LAG_SECONDS = 4.9;

    private final double framesPerSecond;
    private final double[][] windows;
    private final double[] overall;

    private Tempogram(double framesPerSecond, double[][] windows, double[] overall) {
        this.framesPerSecond = framesPerSecond;
        this.windows = windows;
        this.overall = overall;
    }

    static Tempogram of(Onsets onsets) {
        double rate = onsets.framesPerSecond();
        double[] strength = onsets.strength();
        int lags = Math.min((int) (LONGEST_LAG_SECONDS * rate), Math.max(1, strength.length));
        int half = (int) (WINDOW_SECONDS * rate / 2);
        int count = (int) Math.ceil(strength.length / rate) + 1;
        double[][] windows = new double[count][];
        double[] overall = new double[lags];
        for (int w = 0; w < count; w++) {
            int middle = (int) Math.round(w * rate);
            int from = Math.max(0, middle - half);
            int to = Math.min(strength.length, middle + half);
            windows[w] = autocorrelation(strength, from, to, lags);
            for (int lag = 0; lag < lags; lag++) {
                overall[lag] += windows[w][lag] / count;
            }
        }
        return new Tempogram(rate, windows, overall);
    }

    private static double[] autocorrelation(double[] strength, int from, int to, int lags) {
        double[] result = new double[lags];
        double sum = 0;
        for (int n = from; n < to; n++) {
            sum += strength[n];
        }
        double mean = to > from ? sum / (to - from) : 0;
        double[] part = new double[Math.max(0, to - from)];
        for (int n = 0; n < part.length; n++) {
            part[n] = strength[from + n] - mean;
        }
        for (int lag = 0; lag < Math.min(lags, part.length); lag++) {
            double product = 0;
            for (int n = lag; n < part.length; n++) {
                product += part[n] * part[n - lag];
            }
            result[lag] = product / (part.length - lag) * part.length;
        }
        double whole = result[0];
        for (int lag = 0; lag < lags; lag++) {
            result[lag] = whole > 0 ? result[lag] / whole : 0;
        }
        return result;
    }

    /** How many windows there are; window w has its middle at w seconds. */
    int count() {
        return windows.length;
    }

    double framesPerSecond() {
        return framesPerSecond;
    }

    /** How well beats of that period fit over the whole song. */
    double overall(double periodSeconds) {
        return comb(overall, periodSeconds * framesPerSecond);
    }

    /** How well they fit round one second. */
    double at(int window, double periodSeconds) {
        return comb(windows[window], periodSeconds * framesPerSecond);
    }

    /** After one period, two, three and four. */
    private static double comb(double[] lags, double period) {
        double sum = 0;
        double weight = 0;
        for (int k = 1; k <= 4; k++) {
            if (k * period < lags.length - 1) {
                sum += Windows.at(lags, k * period) / k;
                weight += 1.0 / k;
            }
        }
        return weight == 0 ? 0 : sum / weight;
    }
}
