/**
 * In what two renderings differ. Frames and pixels of a frame count from 0, pixels of a prop from 1; differences are
 * those of sRGB codes, 0 to 255. Takes frames from any two sources of {@code frame}.
 */
package org.duskloom.engine.compare;
