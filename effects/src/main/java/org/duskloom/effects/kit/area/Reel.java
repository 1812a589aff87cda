package org.duskloom.effects.kit.area;

/** One or more pictures of one size. Each is made anew when it is asked for, so nothing is gained by holding many. */
public interface Reel {
    /** Pixels in a row. */
    int width();

    /** Rows. */
    int height();

    /** How many pictures there are, at least 1. */
    int count();

    /** A picture, from 0. */
    LightImage image(int index);

    /** A reel of one picture. */
    static Reel of(LightImage image) {
        return new SingleReel(image);
    }
}
