/**
 * Pictures laid over lights. A light shows the mean of the part of the picture that its cell covers, taken in
 * premultiplied linear light: {@link org.duskloom.effects.kit.area.LightField} finds the cells, {@link
 * org.duskloom.effects.kit.area.Placing} says where the picture lies, {@link org.duskloom.effects.kit.area.AreaKernel}
 * paints: from a cache if the picture lies still, else from tables of sums.
 *
 * <p>Places on the stage are in canvas units, x to the right and y up; places in a picture are in its pixels or in
 * shares of its sides, from the upper left corner, the second one down. Times are in seconds from the start of the cue.
 */
package org.duskloom.effects.kit.area;
