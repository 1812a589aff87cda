package org.duskloom.engine.survey;

/**
 * How far a prop is moved and turned by the measurements alone, whether that is more than the measuring error or not.
 * Lengths in the display's unit; errors are standard deviations.
 *
 * @param dx how far the zero point of its shape is moved to the right
 * @param dy how far up
 * @param dz how far toward the audience; 0 where depth was not measured
 * @param error of each of them
 * @param turnDegrees how far it is turned counter-clockwise as the audience sees it, above -180 up to 180
 * @param errorDegrees of the turn
 */
public record Estimate(double dx, double dy, double dz, double error, double turnDegrees, double errorDegrees) {}
