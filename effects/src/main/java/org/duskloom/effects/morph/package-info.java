/**
 * Light that moves from one part to another. {@link org.duskloom.effects.morph.Morph} pairs the pixels once, when the
 * plan is compiled; in every frame a soft dot for each pair lights the pixels that it
 * may meet on that leg of its way.
 * Canvas units, passes and seconds as in {@code org.duskloom.effects.kit}.
 */
package org.duskloom.effects.morph;
