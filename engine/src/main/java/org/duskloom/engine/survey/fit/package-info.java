/**
 * Finds out how a display as built differs from the display as described: {@link org.duskloom.engine.survey.fit.Survey}
 * is the only way in. It lays a photo on the stage ({@code LaidPhoto}), finds what is wrong with everything alike
 * ({@code OverallSearch}), leaves out slips of the pen ({@code Subject}, {@code SlipSearch}), estimates the measuring
 * error ({@code NoiseEstimate}), fits every reading of every prop ({@code ReadingSearch}), chooses ({@code Selection}),
 * and then looks at the props together ({@code Exchanges}, {@code CommonMotions}). Vectors and matrices are JOML's; the
 * fits go over sums, so that a wiring is tried in one pass over the pixels. Lengths are in the display's unit, angles
 * in degrees unless a name says radians.
 */
package org.duskloom.engine.survey.fit;
