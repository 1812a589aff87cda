package org.duskloom.engine.plan;

import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.LevelCurve;
import org.duskloom.engine.sound.SoundBand;
import org.duskloom.engine.sound.SoundLevels;

/**
 * The level of a band of a sound over the time of a show, as much as is above a floor, smoothed. From step to step it
 * goes the share 1 - e^(-step/t) of the way to the level there, t being the attack where it rises and the release where
 * it falls; between two steps it goes straight. It is 0 before the sound starts, and falls after its end.
 */
final class SoundCurve implements LevelCurve {
    /** After so many times the release less than a hundredth of a code is left of the highest level. */
    private static final int RELEASES_TO_NOTHING = 12;

    private static final int LONGEST_TAIL = 60 * SoundLevels.STEPS_PER_SECOND;

    private final double startSeconds;
    private final double[] values;
    private final Fingerprint fingerprint;

    /** @param startSeconds when the sound starts, by the clock of the show */
    SoundCurve(SoundLevels levels, SoundBand band, double startSeconds, CurveBook.Smoothing smoothing) {
        this.startSeconds = startSeconds;
        this.values = smoothed(levels, band, smoothing);
        this.fingerprint = new FingerprintWriter("curve/1")
                .number(startSeconds)
                .numbers(values)
                .finish();
    }

    private static double[] smoothed(SoundLevels levels, SoundBand band, CurveBook.Smoothing smoothing) {
        double rise = share(smoothing.attack().seconds());
        double release = smoothing.release().seconds();
        double fall = share(release);
        double floor = smoothing.floor();
        int tail = (int) Math.min(LONGEST_TAIL, RELEASES_TO_NOTHING * release * SoundLevels.STEPS_PER_SECOND) + 1;
        double[] values = new double[levels.count() + tail];
        double now = 0;
        for (int step = 0; step < values.length; step++) {
            double level = Math.max(0, (levels.value(band, step) - floor) / (1 - floor));
            now += (level - now) * (level > now ? rise : fall);
            values[step] = now;
        }
        values[values.length - 1] = 0;
        return values;
    }

    private static double share(double seconds) {
        return seconds > 0 ? 1 - StrictMath.exp(-1 / (seconds * SoundLevels.STEPS_PER_SECOND)) : 1;
    }

    @Override
    public double at(double showSecond) {
        double place = (showSecond - startSeconds) * SoundLevels.STEPS_PER_SECOND;
        if (!(place >= 0 && place < values.length - 1)) {
            return 0;
        }
        int before = (int) place;
        return values[before] + (place - before) * (values[before + 1] - values[before]);
    }

    @Override
    public boolean hearsBeats() {
        return false;
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.part(fingerprint);
    }
}
