package org.duskloom.engine.survey;

import java.util.Objects;
import java.util.Optional;

/**
 * How a photo of the whole display lies on the stage. It tells nothing of a move, a turn or a scale of the display as a
 * whole.
 *
 * @param unitsPerPictureUnit how many of the display's units a unit of the picture is, in the middle of the display
 * @param turnDegrees how far the picture has to be turned to stand upright: counter-clockwise degrees, above -180 up to
 *     180
 * @param countsDown whether y grows downward in the picture, as in most programs that show pictures
 * @param agreeingPixels how many of the measured pixels agree with it
 * @param camera where it was taken from; nothing where it is as if from far away and straight ahead
 */
public record PhotoAlignment(
        double unitsPerPictureUnit,
        double turnDegrees,
        boolean countsDown,
        int agreeingPixels,
        Optional<CameraStand> camera) {
    /** The share of the pixels that should agree at least. */
    private static final double LEAST_AGREEING = 1.0 / 3;

    public PhotoAlignment {
        Objects.requireNonNull(camera, "camera");
    }

    /**
     * Whether so few pixels agree that the picture may be of something else.
     *
     * @param pixels how many were measured
     */
    public boolean isDoubtful(int pixels) {
        return agreeingPixels < LEAST_AGREEING * pixels;
    }
}
