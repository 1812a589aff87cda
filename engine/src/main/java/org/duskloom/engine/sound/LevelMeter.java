package org.duskloom.engine.sound;

/**
 * Measures levels and loudness of a sound that passes by in blocks. The blocks should be of one size, as their ends
 * leave a trace, far below anything that is heard, in the last bits of what is measured.
 */
public final class LevelMeter {
    private final double rateHz;
    private final double[] weights;
    private final ChannelFilters[] filters;
    private final PowerSteps[] steps = new PowerSteps[SoundBand.values().length];
    private final PowerSteps loudness;
    private double[] weighted = new double[0];
    private double[] band = new double[0];
    private long frames;

    /** @param format of the sound that will pass by */
    public LevelMeter(SoundFormat format) {
        this.rateHz = format.rateHz();
        this.weights = ChannelWeights.of(format);
        this.filters = new ChannelFilters[format.channels()];
        for (int i = 0; i < filters.length; i++) {
            filters[i] = new ChannelFilters(rateHz);
        }
        for (int i = 0; i < steps.length; i++) {
            steps[i] = new PowerSteps(rateHz, SoundLevels.STEPS_PER_SECOND, true);
        }
        this.loudness = new PowerSteps(rateHz, Loudness.STEPS_PER_SECOND, false);
    }

    /** The filters of one channel. */
    private static final class ChannelFilters {
        private final Biquad.Pair weighting;
        private final Biquad.Pair low;
        private final Biquad.Pair aboveLow;
        private final Biquad.Pair mid;
        private final Biquad.Pair high;

        ChannelFilters(double rateHz) {
            weighting = new Biquad.Pair(KWeighting.at(rateHz));
            low = new Biquad.Pair(Biquad.lowPass(SoundBand.LOW_BELOW_HZ, rateHz));
            aboveLow = new Biquad.Pair(Biquad.highPass(SoundBand.LOW_BELOW_HZ, rateHz));
            mid = new Biquad.Pair(Biquad.lowPass(SoundBand.HIGH_ABOVE_HZ, rateHz));
            high = new Biquad.Pair(Biquad.highPass(SoundBand.HIGH_ABOVE_HZ, rateHz));
        }
    }

    /**
     * Takes the next samples.
     *
     * @param channels as {@link SoundStream#read} gives them; not changed
     * @param count how many of each there are
     */
    public void take(double[][] channels, int count) {
        if (weighted.length < count) {
            weighted = new double[count];
            band = new double[count];
        }
        for (int i = 0; i < filters.length; i++) {
            ChannelFilters filter = filters[i];
            filter.weighting.run(channels[i], weighted, count);
            loudness.add(weighted, frames, count, weights[i]);
            steps[SoundBand.ALL.ordinal()].add(weighted, frames, count, weights[i]);
            filter.low.run(channels[i], band, count);
            steps[SoundBand.LOW.ordinal()].add(band, frames, count, 1);
            filter.aboveLow.run(channels[i], weighted, count);
            filter.mid.run(weighted, band, count);
            steps[SoundBand.MID.ordinal()].add(band, frames, count, 1);
            filter.high.run(weighted, band, count);
            steps[SoundBand.HIGH.ordinal()].add(band, frames, count, 1);
        }
        frames += count;
    }

    /** What was measured. */
    public SoundLevels levels() {
        double[][] powers = new double[steps.length][];
        for (int i = 0; i < steps.length; i++) {
            powers[i] = steps[i].means(frames, false);
        }
        return new SoundLevels(frames / rateHz, Loudness.integrated(loudness.means(frames, true)), powers);
    }
}
