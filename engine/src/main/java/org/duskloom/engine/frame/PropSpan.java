package org.duskloom.engine.frame;

import java.util.Objects;

/**
 * Which pixels of a frame belong to one prop.
 *
 * @param name the prop's name
 * @param firstPixel the prop's first pixel in wiring order, from 0
 * @param pixelCount how many pixels it has
 */
public record PropSpan(String name, int firstPixel, int pixelCount) {
    public PropSpan {
        Objects.requireNonNull(name, "name");
        if (firstPixel < 0 || pixelCount < 0) {
            throw new IllegalArgumentException(name + ": " + pixelCount + " pixels from " + firstPixel);
        }
    }
}
