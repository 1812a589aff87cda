package org.duskloom.engine.sound;

import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.ShortestDecimal;

/** What every header must say within bounds, whatever kind of file it stands in. */
final class HeaderChecks {
    private static final String CONVERT = "save it anew as a WAV of 16 or 24 bits";

    private HeaderChecks() {}

    static void channels(long atByte, long channels) throws SoundException {
        if (channels < 1 || channels > SoundFormat.MOST_CHANNELS) {
            throw new SoundException(
                    atByte,
                    "the header says " + Counted.of(channels, "channel"),
                    "1 to " + SoundFormat.MOST_CHANNELS + " are read");
        }
    }

    static void rate(long atByte, double rateHz) throws SoundException {
        if (!(rateHz >= SoundFormat.LEAST_RATE_HZ && rateHz <= SoundFormat.MOST_RATE_HZ)) {
            String shown = Double.isFinite(rateHz) ? ShortestDecimal.of(rateHz) : "no number of";
            throw new SoundException(
                    atByte,
                    "the header says " + shown + " samples a second",
                    SoundFormat.LEAST_RATE_HZ + " to " + SoundFormat.MOST_RATE_HZ + " are read");
        }
    }

    static void wholeBits(long atByte, long bits) throws SoundException {
        if (bits < 1 || bits > 32) {
            throw new SoundException(
                    atByte, "the header says " + bits + " bits a sample", "whole numbers of 1 to 32 bits are read");
        }
    }

    static void floatingBits(long atByte, long bits) throws SoundException {
        if (bits != 32 && bits != 64) {
            throw new SoundException(
                    atByte, "the header says " + bits + " bits a sample of floating point", "32 and 64 are read");
        }
    }

    /** The samples are written in a way that is not read. */
    static SoundException compressed(long atByte, String coding) {
        return new SoundException(atByte, "the samples are " + coding + ", not plain numbers", CONVERT);
    }
}
