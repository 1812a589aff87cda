package org.duskloom.engine.wire;

import org.duskloom.engine.time.FrameRate;

/**
 * How fast the data run through a line of pixel chips: pixel after pixel, bit after bit, then a pause in which they
 * take over what came. A frame of N pixels takes {@code N * bits / kilobits + reset}.
 *
 * <p>The usual figures are those of the common chips for 800 kbit/s: 1.25 us a bit, and a pause of 280 us, which later
 * sheets ask for and earlier ones, with 50 us, bear (data sheets WS2811 V1.4, WS2812B-V5).
 *
 * @param kilobits thousands of bits in a second, above 0
 * @param resetMicros the pause in microseconds, 0 or more
 */
public record DataLine(double kilobits, double resetMicros) {
    /** The line of a port that says nothing of its pixels. */
    public static final DataLine USUAL = new DataLine(800, 280);

    /**
     * @throws IllegalArgumentException if a figure is out of range
     */
    public DataLine {
        if (!(kilobits > 0 && resetMicros >= 0)) {
            throw new IllegalArgumentException(kilobits + " kbit/s, " + resetMicros + " us");
        }
    }

    /** How long a frame takes, in microseconds. */
    public double frameMicros(long pixelCount, int bitsPerPixel) {
        return pixelCount * (bitsPerPixel * 1000 / kilobits) + resetMicros;
    }

    /** How many frames go through in a second. */
    public double mostFramesPerSecond(long pixelCount, int bitsPerPixel) {
        return 1e6 / frameMicros(pixelCount, bitsPerPixel);
    }

    /** How many pixels a line may have at a rate; 0 if not even one. */
    public long mostPixels(FrameRate rate, int bitsPerPixel) {
        double available = 1e6 * rate.denominator() / rate.numerator() - resetMicros;
        return Math.max(0, (long) Math.floor(available * kilobits / (1000.0 * bitsPerPixel)));
    }
}
