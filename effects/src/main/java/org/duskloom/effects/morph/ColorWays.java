package org.duskloom.effects.morph;

/** Ways from one colour to another. */
interface ColorWays {
    /** How many ways there are. */
    int count();

    /**
     * The colours at a share of every way.
     *
     * @param seconds from the start of the cue
     * @param share in [0, 1]
     * @param colors receives them
     */
    void fill(double seconds, float share, Colors colors);

    /** The colours of one frame. For one thread. */
    final class Colors {
        /** How many ways have their colours computed together: few enough for the nearest cache. */
        static final int BLOCK = 512;

        /** Red, green, blue and alpha of each way, premultiplied. */
        final float[] channels;

        /** Scratch: the channels of a block, one by one, and how far each way is gone. */
        final float[] red = new float[BLOCK];

        final float[] green = new float[BLOCK];
        final float[] blue = new float[BLOCK];
        final float[] alpha = new float[BLOCK];
        final float[] shares = new float[BLOCK];

        Colors(int ways) {
            channels = new float[Light.CHANNELS * ways];
        }

        /** Puts the channels of a block side by side. */
        void put(int firstWay, int count) {
            int at = Light.CHANNELS * firstWay;
            for (int i = 0; i < count; i++) {
                channels[at] = red[i];
                channels[at + 1] = green[i];
                channels[at + 2] = blue[i];
                channels[at + 3] = alpha[i];
                at += Light.CHANNELS;
            }
        }
    }
}
