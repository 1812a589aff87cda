package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;

/**
 * One cell of a CSV file.
 *
 * @param text its text without quotes; blanks round an unquoted text are not part of it
 * @param location where it starts; an opening quote counts as its start
 */
public record Cell(String text, Location location) {}
