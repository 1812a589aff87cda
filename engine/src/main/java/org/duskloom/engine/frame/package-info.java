/**
 * Frames on their way from whoever makes them to whoever takes them: arrays of R, G, B, one byte each, pixel after
 * pixel in wiring order, in the order of time, counted from 0. A {@link org.duskloom.engine.frame.FrameSource} has
 * them, a {@link org.duskloom.engine.frame.FrameSink} takes them, a {@link org.duskloom.engine.frame.FrameRun} brings
 * them from the one to any number of the others. Stands between {@code show} and {@code plan}.
 */
package org.duskloom.engine.frame;
