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
     * @param colors receives them, premultiplied
     */
    void fill(double seconds, float share, Colors colors);

    /** The colours of one frame. For one thread. */
    final class Colors {
        final float[] red;
        final float[] green;
        final float[] blue;
        final float[] alpha;
        /** Scratch. */
        final float[] shares;

        Colors(int ways) {
            red = new float[ways];
            green = new float[ways];
            blue = new float[ways];
            alpha = new float[ways];
            shares = new float[ways];
        }

        /** Gives each dot the colour of its way: red, green, blue and alpha side by side. */
        void give(int[] ways, float[] dots) {
            int at = 0;
            for (int way : ways) {
                dots[at] = red[way];
                dots[at + 1] = green[way];
                dots[at + 2] = blue[way];
                dots[at + 3] = alpha[way];
                at += Light.CHANNELS;
            }
        }
    }
}
