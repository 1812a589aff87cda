package org.duskloom.engine.sound.music;

/** Means over what lies round each place of a curve. */
final class Windows {
    private static final double GAUSSIAN_REACH = 3;

    private Windows() {}

    /** Weighted by a Gaussian of that standard deviation; at the ends by what there is of it. */
    static double[] gaussian(double[] curve, double deviation) {
        int reach = (int) Math.ceil(GAUSSIAN_REACH * deviation);
        double[] weights = new double[reach + 1];
        for (int i = 0; i <= reach; i++) {
            weights[i] = StrictMath.exp(-0.5 * (i / deviation) * (i / deviation));
        }
        double[] smooth = new double[curve.length];
        for (int n = 0; n < curve.length; n++) {
            double sum = 0;
            double whole = 0;
            for (int k = Math.max(-reach, -n); k <= Math.min(reach, curve.length - 1 - n); k++) {
                double weight = weights[Math.abs(k)];
                sum += weight * curve[n + k];
                whole += weight;
            }
            smooth[n] = sum / whole;
        }
        return smooth;
    }

    /** The plain mean over so many places to both sides; at the ends over what there is. */
    static double[] mean(double[] curve, int reach) {
        double[] sums = new double[curve.length + 1];
        for (int n = 0; n < curve.length; n++) {
            sums[n + 1] = sums[n] + curve[n];
        }
        double[] means = new double[curve.length];
        for (int n = 0; n < curve.length; n++) {
            int from = Math.max(0, n - reach);
            int to = Math.min(curve.length, n + reach + 1);
            means[n] = (sums[to] - sums[from]) / (to - from);
        }
        return means;
    }

    /** The value between places, on the straight line. */
    static double at(double[] curve, double place) {
        if (curve.length == 0 || place < 0 || place > curve.length - 1) {
            return 0;
        }
        int before = Math.min((int) place, Math.max(0, curve.length - 2));
        double share = place - before;
        double next = before + 1 < curve.length ? curve[before + 1] : curve[before];
        return curve[before] + share * (next - curve[before]);
    }

    /** The greatest value within a reach of a place. */
    static double peak(double[] curve, double place, int reach) {
        int middle = (int) Math.round(place);
        double most = 0;
        for (int n = Math.max(0, middle - reach); n <= Math.min(curve.length - 1, middle + reach); n++) {
            most = Math.max(most, curve[n]);
        }
        return most;
    }
}
