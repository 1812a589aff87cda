/**
 * Turns a plan into frames: bytes of red, green and blue, one of each per pixel in wiring order, as sRGB code values.
 * Frames are numbered from 0 and handed in rising order to {@link org.duskloom.engine.frame.FrameSink}s, which stand
 * after this package in the flow.
 */
package org.duskloom.engine.render;
