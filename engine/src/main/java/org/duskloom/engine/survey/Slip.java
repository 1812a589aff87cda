package org.duskloom.engine.survey;

/**
 * A measurement that does not go with the others of its prop and was left out: probably a slip of the pen.
 *
 * @param pixel the pixel, from 0 within its prop
 * @param distance how far it was measured from where the others put it, in the display's unit
 */
public record Slip(int pixel, double distance) {}
