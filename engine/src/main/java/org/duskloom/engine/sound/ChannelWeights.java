package org.duskloom.engine.sound;

/**
 * How much a channel counts for the loudness: Recommendation ITU-R BS.1770-4, Annexes 1 and 3. Loudspeakers at the
 * sides of the listener, 60 to 120 degrees from the front, count 1.41, the one for effects of low frequency not at all,
 * all others 1.
 */
final class ChannelWeights {
    private static final double SURROUND = 1.41;

    private static final int EFFECTS_BIT = 0x8;
    private static final int BACK_BITS = 0x10 | 0x20;
    private static final int SIDE_BITS = 0x200 | 0x400;

    /** What one to eight channels are unless the header says it: from the centre alone to a hall of seven and one. */
    private static final int[] USUAL = {0x4, 0x3, 0x7, 0x33, 0x37, 0x3F, 0x70F, 0x63F};

    private ChannelWeights() {}

    /** A weight for each channel. */
    static double[] of(SoundFormat format) {
        int count = format.channels();
        int speakers = Integer.bitCount(format.speakers()) == count ? format.speakers() : USUAL[count - 1];
        // Where there are sides, what is behind stands at 135 degrees or more; else it is the surround.
        int surround = (speakers & SIDE_BITS) != 0 ? SIDE_BITS : BACK_BITS;
        double[] weights = new double[count];
        for (int i = 0; i < count; i++) {
            int bit = Integer.lowestOneBit(speakers);
            speakers &= ~bit;
            weights[i] = bit == EFFECTS_BIT ? 0 : (bit & surround) != 0 ? SURROUND : 1;
        }
        return weights;
    }
}
