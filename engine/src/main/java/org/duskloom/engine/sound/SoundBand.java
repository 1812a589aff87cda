package org.duskloom.engine.sound;

/** A part of what is heard, of which a level is known. */
public enum SoundBand {
    /** All of it, weighted as the ear hears it (K-weighting of BS.1770). */
    ALL,
    /** Under {@value SoundBand#LOW_BELOW_HZ} Hz: bass drum and bass. */
    LOW,
    /** Between the two others: voices and most instruments. */
    MID,
    /** Over {@value SoundBand#HIGH_ABOVE_HZ} Hz: cymbals, consonants. */
    HIGH;

    /** Where the low band ends. */
    public static final int LOW_BELOW_HZ = 150;

    /** Where the high band begins. */
    public static final int HIGH_ABOVE_HZ = 2_000;
}
