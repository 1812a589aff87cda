package org.duskloom.engine.frame;

import java.io.IOException;

/**
 * A few frames of a run, one after the other in one array. The array is used again for later frames: whoever is given a
 * batch may keep what it likes of it, but not the batch nor the array.
 */
public final class FrameBatch {
    private final FrameList frames;
    private final int frameBytes;
    private final byte[] rgb;
    private long firstPlace;
    private int count;

    FrameBatch(FrameList frames, int most, int frameBytes) {
        this(frames, frameBytes, new byte[Math.multiplyExact(most, frameBytes)]);
    }

    private FrameBatch(FrameList frames, int frameBytes, byte[] rgb) {
        this.frames = frames;
        this.frameBytes = frameBytes;
        this.rgb = rgb;
    }

    /** A batch of one frame. */
    public static FrameBatch of(long frame, byte[] rgb) {
        return new FrameBatch(FrameList.of(frame), rgb.length, rgb).set(0, 1);
    }

    /**
     * All frames of a short list.
     *
     * @throws IOException if one of them cannot be had
     */
    public static FrameBatch of(FrameList frames, int frameBytes, FrameReader reader) throws IOException {
        int count = Math.toIntExact(frames.count());
        FrameBatch batch = new FrameBatch(frames, count, frameBytes).set(0, count);
        batch.fill(reader);
        return batch;
    }

    /** How many frames it holds. */
    public int count() {
        return count;
    }

    /** The number in the show of one of its frames, which are counted from 0; they rise. */
    public long frame(int index) {
        return frames.frame(firstPlace + index);
    }

    /**
     * One byte each of red, green and blue for every pixel in wiring order, as sRGB code values, frame after frame.
     * Must not be changed.
     */
    public byte[] rgb() {
        return rgb;
    }

    /** Where in {@link #rgb} one of its frames starts. */
    public int offset(int index) {
        return index * frameBytes;
    }

    /** How many bytes a frame has. */
    public int frameBytes() {
        return frameBytes;
    }

    /** How many bytes of {@link #rgb}, from its start, are those of its frames. */
    public int bytes() {
        return count * frameBytes;
    }

    /** The place in the run, from 0, of one of its frames. */
    public long place(int index) {
        return firstPlace + index;
    }

    /** Sets which places of the run it holds. */
    FrameBatch set(long firstPlaceInRun, int frameCount) {
        firstPlace = firstPlaceInRun;
        count = frameCount;
        return this;
    }

    void fill(FrameReader reader) throws IOException {
        for (int i = 0; i < count; i++) {
            reader.read(frame(i), rgb, offset(i));
        }
    }
}
