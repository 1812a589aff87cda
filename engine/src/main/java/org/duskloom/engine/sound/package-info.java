/**
 * Sound as a show sees it: samples read as a stream from WAV, AIFF and AU, how loud they are (Recommendation ITU-R
 * BS.1770), and how much there is of low, middle and high sound at any time. Samples are doubles with full scale at 1,
 * times are seconds from the first sample, levels are decibels under full scale until they are mapped to 0..1. Nothing
 * here depends on the JDK's own sound system: the same bytes give the same bits everywhere.
 *
 * <p>{@link org.duskloom.engine.sound.LabelTrack} is a file of labels as editors of sounds write it: beats, bars and
 * sections by their times, as {@link org.duskloom.engine.time.ExactTime} by the clock of the sound. Knows no timeline
 * and no pixel; the timeline counts beats by what is read here.
 */
package org.duskloom.engine.sound;
