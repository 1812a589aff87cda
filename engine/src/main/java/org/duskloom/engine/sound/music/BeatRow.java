package org.duskloom.engine.sound.music;

/**
 * A row of beats that was tried, and what speaks for it.
 *
 * @param periodSeconds the period that it was made for
 * @param frames where the beats lie, in frames of the onsets
 * @param repeats how well the song repeats after that period and its multiples, at best 1
 * @param traits what speaks for it or against it, as {@link RowScore#TRAITS} names them
 */
record BeatRow(double periodSeconds, double[] frames, double repeats, double[] traits) {
    static BeatRow of(Onsets onsets, double repeats, double periodSeconds, double[] frames) {
        return new BeatRow(periodSeconds, frames, repeats, new RowTraits(onsets, frames).of(periodSeconds, repeats));
    }
}
