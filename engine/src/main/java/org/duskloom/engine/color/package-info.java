/**
 * Colour. Inside the renderer a colour is linear light: red, green and blue of the sRGB primaries in [0, 1], in
 * proportion to the light that leaves the pixel, with an alpha in [0, 1] ({@link
 * org.duskloom.engine.color.LinearColor}). The package reads colours as CSS writes them, mixes them, lays them over
 * each other, and encodes the result once, at the end, to 8 bits.
 *
 * <p>Anything that a byte of a frame depends on uses {@code StrictMath} or plain arithmetic, so that it is the same
 * everywhere. Used by the effects, the plan, the renderer and the outputs; uses only the packages for problems,
 * documents and CSS syntax.
 */
package org.duskloom.engine.color;
