/**
 * Files of frames for other programs: the frames themselves, and the manifest that says what they are. Frames and
 * pixels count from 0. Takes frames from {@code frame} and writes through {@code file}.
 */
package org.duskloom.engine.format;
