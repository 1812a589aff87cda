/**
 * Finding the beats, bars and sections of a song: spectra in mel bands, how strongly something begins in them, the
 * tempo from its autocorrelation, beats by dynamic programming (D. P. W. Ellis, 2007), bars from accents, sections by
 * novelty (J. Foote, 2000). Times are seconds of the sound, frames are the steps of the spectra, periods are seconds
 * or frames as the name says. What is found is a proposal with a confidence. Comes after {@code sound}, whose blocks
 * it takes.
 */
package org.duskloom.engine.sound.music;
