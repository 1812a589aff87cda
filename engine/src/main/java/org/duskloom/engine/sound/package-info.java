/**
 * What a show takes from its music. {@link org.duskloom.engine.sound.LabelTrack} is a file of labels as editors of
 * sounds write it: beats, bars and sections by their times. Instants are {@link org.duskloom.engine.time.ExactTime}, by
 * the clock of the sound. Knows no timeline and no pixel; the timeline counts beats by what is read here.
 */
package org.duskloom.engine.sound;
