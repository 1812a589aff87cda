/**
 * What effects are built from: the clock of periodic effects ({@link org.duskloom.effects.kit.Motion}), numbers that
 * stay in range ({@link org.duskloom.effects.kit.Dial}), where pixels lie along a direction ({@link
 * org.duskloom.effects.kit.Projection}), on a way that repeats ({@link org.duskloom.effects.kit.Repeats}) and about a
 * centre ({@link org.duskloom.effects.kit.Polar}), palettes for many pixels at once ({@link
 * org.duskloom.effects.kit.Ramp}), bands ({@link org.duskloom.effects.kit.Band}, {@link
 * org.duskloom.effects.kit.BandLook}), windows of time that start at another instant for each pixel ({@link
 * org.duskloom.effects.kit.WindowOffsets}) and easings ({@link org.duskloom.effects.kit.Easings}).
 *
 * <p>Shares and fractions are in [0, 1], angles in turns unless a name says degrees, distances in canvas units, times
 * in seconds from the start of the cue. The loops over planes of floats are kept so small, and indexed so plainly, that
 * the compiler turns them into vector instructions; none of them has a branch or a call in it for this reason.
 */
package org.duskloom.effects.kit;
