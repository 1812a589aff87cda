/**
 * Finds in pictures of a run where every pixel hangs. {@link org.duskloom.engine.locate.Locator} reads
 * {@link org.duskloom.engine.locate.Pictures} one after the other, keeps the surroundings of lights, reads the word
 * that every dot of them says, gathers connected dots that say the same number, and refuses what cannot be. A dot is a
 * point of a picture, a pixel a light of the display; places are in dots of the lit picture, upright, (0, 0) the
 * middle of its top left one, y down; light is linear, 1 is the brightest that a picture can show.
 */
package org.duskloom.engine.locate;
