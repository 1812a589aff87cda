package org.duskloom.engine.survey;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Where a photo was taken from, seen from the middle of the display, and through what lens.
 *
 * @param asideDegrees how far to the audience's right of straight ahead; to the left below 0
 * @param aboveDegrees how far up
 * @param distance in the display's unit; nothing where the picture does not tell it, as of a flat display from the
 *     front
 * @param focalLength in units of the picture; nothing where the picture does not tell it
 * @param lensBend k1 of the lens, below 0 where it bulges; nothing where the picture does not tell it
 */
public record CameraStand(
        double asideDegrees,
        double aboveDegrees,
        OptionalDouble distance,
        OptionalDouble focalLength,
        OptionalDouble lensBend) {
    public CameraStand {
        Objects.requireNonNull(distance, "distance");
        Objects.requireNonNull(focalLength, "focalLength");
        Objects.requireNonNull(lensBend, "lensBend");
    }
}
