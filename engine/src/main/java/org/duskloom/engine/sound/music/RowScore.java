package org.duskloom.engine.sound.music;

/**
 * How likely a row of beats is the one that people tap. What repeats well is likely, what lies about 120 a minute is,
 * and beats on which something loud and low begins are; not so beats between or at thirds of which as much begins, or
 * of which every other is much stronger. The weights come from a conditional logit, fitted with a penalty to songs made
 * for it, none of which is among those of the tests.
 */
final class RowScore {
    private static final double USUAL_PERIOD_SECONDS = 0.49;
    private static final double LEAST = 0.1;

    private RowScore() {}

    static double of(BeatRow row) {
        double octaves = StrictMath.log(row.periodSeconds() / USUAL_PERIOD_SECONDS) / StrictMath.log(2);
        return 3.1 * row.repeats()
                - 2.3 * octaves * octaves
                - 3.4 * row.low().between()
                - 0.8 * row.punch().between()
                - 1.8 * row.punch().alternation()
                - 2.6 * row.all().thirds()
                - 2.2 * row.punch().thirds()
                - 1.5 * row.low().thirds()
                + 0.75 * StrictMath.log(row.low().on() + LEAST)
                + 0.95 * StrictMath.log(row.punch().on() + LEAST);
    }
}
