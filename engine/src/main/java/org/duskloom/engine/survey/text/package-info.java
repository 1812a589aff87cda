/**
 * Says in words what a survey found out, and writes entries to paste into the display; {@link
 * org.duskloom.engine.survey.text.SurveyReport} is the only way in. Lengths with the display's unit, angles in degrees,
 * pixels counted from 1.
 */
package org.duskloom.engine.survey.text;
