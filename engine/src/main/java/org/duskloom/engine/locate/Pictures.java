package org.duskloom.engine.locate;

import java.io.IOException;

/** The pictures of a run, in order. They are read one after the other, perhaps more than once. */
public interface Pictures {
    /** How many there are. */
    int count();

    /**
     * What a person calls one of them.
     *
     * @param picture from 0
     */
    String name(int picture);

    /**
     * How large one of them is when it stands upright.
     *
     * @param picture from 0
     * @throws PicturesRefusedException if it is no picture that can be read
     */
    PictureSize size(int picture) throws IOException, PicturesRefusedException;

    /**
     * Reads the brightness of its dots as sRGB codes, row by row from its top left, as it stands upright.
     *
     * @param picture from 0
     * @param codes takes a code for each dot
     * @throws PicturesRefusedException if it is no picture that can be read
     */
    void read(int picture, byte[] codes) throws IOException, PicturesRefusedException;
}
