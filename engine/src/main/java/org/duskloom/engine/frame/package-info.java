/**
 * Frames on their way from whoever makes them to whoever takes them: arrays of R, G, B, one byte each, pixel after pixel
 * in wiring order, in the order of time, counted from 0. Stands between {@code show} and {@code plan}.
 */
package org.duskloom.engine.frame;
