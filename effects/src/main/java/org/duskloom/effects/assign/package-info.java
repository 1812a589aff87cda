/**
 * Who goes with whom at least total cost: the exact answer for a table of costs ({@link
 * org.duskloom.effects.assign.Assignment}), and pixels paired with pixels at about the least total squared distance,
 * however many there are ({@link org.duskloom.effects.assign.EvenPairing}).
 *
 * <p>Runs while a plan is compiled. Distances are in canvas units; the numbers of points are their places in the arrays
 * given.
 */
package org.duskloom.effects.assign;
