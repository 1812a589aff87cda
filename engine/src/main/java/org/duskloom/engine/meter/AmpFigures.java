package org.duskloom.engine.meter;

/**
 * A current over a run, in amperes.
 *
 * @param mean of all frames
 * @param p99 what 99 frames of 100 stay at or below; too high by less than a ten-thousandth of what everything on draws
 * @param peak the most
 * @param peakFrame the first frame that draws it, by its number in the show
 * @param columns the peak of each of some hundred equal stretches of the run, for a chart
 */
public record AmpFigures(double mean, double p99, double peak, long peakFrame, double[] columns) {}
