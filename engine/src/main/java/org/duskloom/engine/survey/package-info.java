/**
 * What is measured of a display as built, and what was found out by comparing it with the display as described: data
 * without behaviour. {@link org.duskloom.engine.survey.MeasurementReader} reads the measurements; {@code survey.fit}
 * finds out, {@code survey.text} says it in words. Lengths are in the display's unit, angles in degrees,
 * counter-clockwise as the audience sees them. In files pixels count from 1, in the code from 0. Uses {@code problem},
 * {@code document}, {@code map} and {@code display}; only the command line uses it, nothing that is rendered depends on
 * it.
 */
package org.duskloom.engine.survey;
