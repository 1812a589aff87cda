/**
 * What is wrong with an input, and where. Every reader and every later check adds to one {@link
 * org.duskloom.engine.problem.Problems}, so that one run reports everything at once; nothing here knows a file format.
 * First in the package order: it uses no other package of the engine.
 */
package org.duskloom.engine.problem;
