package org.duskloom.engine.sound.music;

/**
 * A part of a song.
 *
 * @param name a letter; parts that sound alike have the same
 * @param startSeconds where it begins
 * @param endSeconds where the next one does, or the song ends
 * @param confidence 0 to 1: how clearly it begins
 */
public record Section(String name, double startSeconds, double endSeconds, double confidence) {}
