/**
 * Compares a display as described with the display as built: where its pixels are described to hang, against where they were
 * measured. {@link org.duskloom.engine.survey.MeasurementReader} reads the measurements, {@link
 * org.duskloom.engine.survey.Survey} says of each prop how it differs, {@link org.duskloom.engine.survey.SurveyReport} says it
 * in words. Lengths are in the display's unit, angles in degrees, counter-clockwise as the audience sees them. In files
 * pixels count from 1, in the code from 0. Uses {@code problem}, {@code document}, {@code random}, {@code map} and {@code
 * display}; only the command line uses it, nothing that is rendered depends on it.
 */
package org.duskloom.engine.survey;
