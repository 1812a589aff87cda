/**
 * The run by which pixels tell a camera where they hang: the words that carry their numbers
 * ({@link org.duskloom.engine.find.FindCode}) and which pixel is lit when ({@link org.duskloom.engine.find.FindRun}).
 * Pixels are counted from 0 in wiring order, times in halves of the time for which a step is held.
 */
package org.duskloom.engine.find;
