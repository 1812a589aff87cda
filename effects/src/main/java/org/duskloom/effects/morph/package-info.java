/**
 * Light that moves from one part to another. {@link org.duskloom.effects.morph.Morph} pairs the pixels once, when the
 * plan is compiled; in every frame a soft dot for each pair lights the pixels round it, found by cell.
 * Canvas units, passes and seconds as in {@code org.duskloom.effects.kit}.
 */
package org.duskloom.effects.morph;
