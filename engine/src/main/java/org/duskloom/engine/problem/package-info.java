/**
 * What is wrong with an input, and where. Every reader and every later check adds to one {@link
 * org.duskloom.engine.problem.Problems}, so that one run reports everything at once; nothing here knows a file format.
 * Of the other packages of the engine it uses only {@code text}, which words what a problem says.
 */
package org.duskloom.engine.problem;
