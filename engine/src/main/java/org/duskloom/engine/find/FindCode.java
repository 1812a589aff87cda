package org.duskloom.engine.find;

/**
 * The words by which pixels tell a camera their numbers. A word holds the Gray code of the number, lowest bit first (F.
 * Gray, US 2,632,058, 1953), then its Hamming remainder, then a bit that makes the number of ones even (R. W. Hamming,
 * Bell System Technical Journal 29, 1950). Two words differ in at least four bits: one wrong bit can be put right, two
 * are always noticed. Immutable.
 */
public final class FindCode {
    /** How many pixels may have words at most. */
    static final int MOST_PIXELS = 1 << 24;

    private final int pixelCount;
    private final int numberBits;
    private final int remainderBits;

    /** @throws IllegalArgumentException unless there are 1 to 2^24 pixels */
    public FindCode(int pixelCount) {
        if (pixelCount < 1 || pixelCount > MOST_PIXELS) {
            throw new IllegalArgumentException(pixelCount + " pixels");
        }
        this.pixelCount = pixelCount;
        this.numberBits = Math.max(1, Integer.SIZE - Integer.numberOfLeadingZeros(pixelCount - 1));
        int checks = 2;
        while (1 << checks < numberBits + checks + 1) {
            checks++;
        }
        this.remainderBits = checks;
    }

    /** How many pixels have words. */
    public int pixelCount() {
        return pixelCount;
    }

    /** How many bits of a word hold the number. */
    public int numberBits() {
        return numberBits;
    }

    /** How many bits a word has. */
    public int bits() {
        return numberBits + remainderBits + 1;
    }

    /**
     * The word of a pixel.
     *
     * @param pixel its place in wiring order, from 0
     * @return bit 0 is the lowest one of the Gray code
     */
    public int word(int pixel) {
        int number = gray(pixel);
        int word = number | remainder(number) << numberBits;
        return word | (Integer.bitCount(word) & 1) << bits() - 1;
    }

    /** The pixel whose word this is, or -1 if it is nobody's. */
    public int pixel(int word) {
        int pixel = ungray(word & (1 << numberBits) - 1);
        return pixel < pixelCount && word(pixel) == word ? pixel : -1;
    }

    /**
     * Which bit to turn round so that a word is that of a pixel.
     *
     * @return the bit, or -1 if the word is right as it is, or more than one bit is wrong
     */
    public int wrongBit(int word) {
        if (pixel(word) < 0) {
            for (int bit = 0; bit < bits(); bit++) {
                if (pixel(word ^ 1 << bit) >= 0) {
                    return bit;
                }
            }
        }
        return -1;
    }

    /** The exclusive or of the places of all ones, where bits have the places that are no power of two, from 3 on. */
    private int remainder(int number) {
        int remainder = 0;
        int place = 3;
        for (int bit = 0; bit < numberBits; bit++, place++) {
            if (Integer.bitCount(place) == 1) {
                place++;
            }
            remainder ^= (number >>> bit & 1) * place;
        }
        return remainder;
    }

    private static int gray(int number) {
        return number ^ number >>> 1;
    }

    private static int ungray(int gray) {
        int number = gray;
        for (int shift = 1; shift < Integer.SIZE; shift <<= 1) {
            number ^= number >>> shift;
        }
        return number;
    }
}
