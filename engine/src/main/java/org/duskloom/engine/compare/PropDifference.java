package org.duskloom.engine.compare;

import java.util.BitSet;

/** In what the frames of one prop differ; grows as frames are looked at, in rising order. */
public final class PropDifference {
    private final String name;
    private final BitSet pixels = new BitSet();
    private long frames;
    private long firstFrame;
    private long lastFrame;
    private Largest largest = new Largest(0, 0, 0, 0, 0);

    /**
     * The largest difference of a colour, the first of them where there are several.
     *
     * @param codes how large it is, 0 to 255
     * @param frame the frame's number in the show
     * @param pixel the pixel of the prop, from 1
     * @param first its colour in the first rendering, 0xRRGGBB
     * @param second its colour in the second
     */
    public record Largest(int codes, long frame, int pixel, int first, int second) {}

    PropDifference(String name) {
        this.name = name;
    }

    /** The prop's name. */
    public String name() {
        return name;
    }

    /** In how many frames it differs. */
    public long frames() {
        return frames;
    }

    /** The first frame in which it does. */
    public long firstFrame() {
        return firstFrame;
    }

    /** The last one. */
    public long lastFrame() {
        return lastFrame;
    }

    /** How many of its pixels differ in some frame. */
    public int pixels() {
        return pixels.cardinality();
    }

    /** Where it differs most. */
    public Largest largest() {
        return largest;
    }

    /** Looks at a frame in which some of these bytes differ. */
    void add(long frame, byte[] rgb, int first, int second, int pixelCount) {
        firstFrame = frames == 0 ? frame : firstFrame;
        lastFrame = frame;
        frames++;
        for (int pixel = 0; pixel < pixelCount; pixel++) {
            int codes = 0;
            for (int i = 3 * pixel; i < 3 * pixel + 3; i++) {
                codes = Math.max(codes, Math.abs((rgb[first + i] & 0xFF) - (rgb[second + i] & 0xFF)));
            }
            if (codes > 0) {
                pixels.set(pixel);
            }
            if (codes > largest.codes) {
                largest = new Largest(
                        codes, frame, pixel + 1, color(rgb, first + 3 * pixel), color(rgb, second + 3 * pixel));
            }
        }
    }

    private static int color(byte[] rgb, int at) {
        return (rgb[at] & 0xFF) << 16 | (rgb[at + 1] & 0xFF) << 8 | rgb[at + 2] & 0xFF;
    }
}
