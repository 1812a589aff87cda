package org.duskloom.engine.sound;

/**
 * The weighting of Recommendation ITU-R BS.1770-4, Annex 1: a shelf that lifts what a head lifts, and a high pass. Its
 * tables are for 48 kHz; for other rates both sections are designed anew from the analogue form that gives these
 * tables (parameters as several open libraries have them; they give the published table to 14 digits).
 */
final class KWeighting {
    private static final double SHELF_HZ = 1681.974450955533;
    private static final double SHELF_GAIN_DB = 3.999843853973347;
    private static final double SHELF_Q = 0.7071752369554196;
    private static final double SHELF_BAND_EXPONENT = 0.4996667741545416;
    private static final double HIGH_PASS_HZ = 38.13547087602444;
    private static final double HIGH_PASS_Q = 0.5003270373238773;
    private static final double TABLE_RATE_HZ = 48_000;

    /** Under this rate the shelf is laid so that the sine of all test signals has the gain that it has at 48 kHz. */
    private static final double BENT_BELOW_HZ = 16_000;

    private static final double SINE_HZ = 1_000;

    private KWeighting() {}

    /** The two sections for a rate. */
    static Biquad[] at(double rateHz) {
        return new Biquad[] {shelf(rateHz), highPass(rateHz)};
    }

    private static Biquad shelf(double rateHz) {
        double k = rateHz < BENT_BELOW_HZ ? cornerBySine(rateHz) : StrictMath.tan(Math.PI * SHELF_HZ / rateHz);
        double high = StrictMath.pow(10, SHELF_GAIN_DB / 20);
        double band = StrictMath.pow(high, SHELF_BAND_EXPONENT);
        double scale = 1 + k / SHELF_Q + k * k;
        return new Biquad(
                (high + band * k / SHELF_Q + k * k) / scale,
                2 * (k * k - high) / scale,
                (high - band * k / SHELF_Q + k * k) / scale,
                2 * (k * k - 1) / scale,
                (1 - k / SHELF_Q + k * k) / scale);
    }

    /** The bilinear transform bends the top; at low rates what is right at the corner is 0.2 dB off at 1 kHz. */
    private static double cornerBySine(double rateHz) {
        double atTable =
                StrictMath.tan(Math.PI * SHELF_HZ / TABLE_RATE_HZ) / StrictMath.tan(Math.PI * SINE_HZ / TABLE_RATE_HZ);
        return StrictMath.tan(Math.PI * SINE_HZ / rateHz) * atTable;
    }

    /**
     * The table's numerator is 1, -2, 1, which lifts the whole by a few thousandths of a decibel at 48 kHz, and by
     * tenths at 8 kHz; so it is scaled to lift as much as at 48 kHz.
     */
    private static Biquad highPass(double rateHz) {
        Biquad plain = plainHighPass(rateHz);
        double scale = lift(plainHighPass(TABLE_RATE_HZ)) / lift(plain);
        return new Biquad(scale, -2 * scale, scale, plain.a1(), plain.a2());
    }

    private static Biquad plainHighPass(double rateHz) {
        double k = StrictMath.tan(Math.PI * HIGH_PASS_HZ / rateHz);
        double scale = 1 + k / HIGH_PASS_Q + k * k;
        return new Biquad(1, -2, 1, 2 * (k * k - 1) / scale, (1 - k / HIGH_PASS_Q + k * k) / scale);
    }

    /** The gain at half the rate. */
    private static double lift(Biquad section) {
        return 4 / (1 - section.a1() + section.a2());
    }
}
