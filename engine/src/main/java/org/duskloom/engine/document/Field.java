package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;

/**
 * One name and its value in a JSON object.
 *
 * @param name the name, escapes resolved
 * @param nameLocation where the name's opening quote stands
 * @param value the value
 */
public record Field(String name, Location nameLocation, Node value) {}
