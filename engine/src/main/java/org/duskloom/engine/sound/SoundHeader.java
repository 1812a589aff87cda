package org.duskloom.engine.sound;

import java.util.OptionalLong;

/**
 * What stands before the samples.
 *
 * @param container the word for the kind of file
 * @param channels how many there are
 * @param rateHz samples a second of each
 * @param coding how a sample is written
 * @param speakers what the channels are for, a bit for each as in a WAV header, or 0 where it says nothing
 * @param dataBytes how many bytes of samples the header speaks of; {@link #UNKNOWN} where it says nothing
 */
record SoundHeader(String container, int channels, double rateHz, SampleCoding coding, int speakers, long dataBytes) {
    /** A pipe does not know how much will come through it. */
    static final long UNKNOWN = -1;

    /** Programs that write into a pipe put a length here that is as large as they dare. */
    private static final long NEVER_MEANT = 0x7FFF_0000L;

    /** Bytes of one sample of every channel. */
    int frameBytes() {
        return channels * coding.bytes();
    }

    /** Whether the header speaks of a length that a writer can have meant. */
    boolean lengthIsMeant() {
        return dataBytes != UNKNOWN && (dataBytes < NEVER_MEANT || dataBytes > 0xFFFF_FFFFL);
    }

    /** Whether the header speaks of more hours than these, and the file has as many bytes. */
    boolean isLongerThan(int hours, long fileBytes) {
        long least = (long) (hours * 3600.0 * rateHz) * frameBytes();
        return fileBytes > least && (dataBytes > least || dataBytes == UNKNOWN);
    }

    SoundFormat format() {
        OptionalLong frames = lengthIsMeant() ? OptionalLong.of(dataBytes / frameBytes()) : OptionalLong.empty();
        return new SoundFormat(container, channels, rateHz, coding.words(), speakers, frames);
    }
}
