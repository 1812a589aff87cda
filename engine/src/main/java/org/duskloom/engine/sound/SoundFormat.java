package org.duskloom.engine.sound;

import java.util.OptionalLong;

/**
 * What a sound's header says of its samples.
 *
 * @param container the trade's word for the kind of file, such as {@code WAV}
 * @param channels 1 to {@value #MOST_CHANNELS}
 * @param rateHz samples a second of each channel, {@value #LEAST_RATE_HZ} to {@value #MOST_RATE_HZ}
 * @param coding how one sample is written, such as {@code 16-bit integers}
 * @param speakers where the channels belong, a bit for each as WAVE_FORMAT_EXTENSIBLE has them; 0 where nothing is said
 * @param declaredFrames how many samples of each channel there are, where the header says something believable; a pipe
 *     does not know it
 */
public record SoundFormat(
        String container, int channels, double rateHz, String coding, int speakers, OptionalLong declaredFrames) {
    /** More channels than those of a hall are a slip. */
    public static final int MOST_CHANNELS = 8;

    /** Speech on an old telephone. */
    public static final int LEAST_RATE_HZ = 8_000;

    /** The most that studios use. */
    public static final int MOST_RATE_HZ = 192_000;
}
