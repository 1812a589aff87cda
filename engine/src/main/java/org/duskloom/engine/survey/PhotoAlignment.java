package org.duskloom.engine.survey;

/**
 * How a photo of the whole display lies on the stage. It tells nothing of a move, a turn or a scale of the display as a
 * whole.
 *
 * @param unitsPerPictureUnit how many of the display's units a unit of the picture is
 * @param turnDegrees how far the picture has to be turned to stand upright: counter-clockwise degrees, above -180 up to
 *     180
 * @param countsDown whether y grows downward in the picture, as in most programs that show pictures
 * @param agreeingPixels how many of the measured pixels agree with it
 */
public record PhotoAlignment(double unitsPerPictureUnit, double turnDegrees, boolean countsDown, int agreeingPixels) {}
