package org.duskloom.engine.render;

/** A few frames that one thread renders at a time. The buffer is used again for later chunks. */
final class FrameChunk {
    private final byte[] rgb;
    private final int frameBytes;
    private long firstPlace;
    private int count;

    FrameChunk(int frames, int pixels) {
        frameBytes = 3 * pixels;
        rgb = new byte[Math.multiplyExact(frames, frameBytes)];
    }

    /** Sets which places of the list of frames it holds. */
    FrameChunk set(long firstPlaceInList, int frames) {
        firstPlace = firstPlaceInList;
        count = frames;
        return this;
    }

    /** Renders its frames. */
    FrameChunk render(FramePainter painter, FrameList frames) {
        for (int i = 0; i < count; i++) {
            painter.render(frames.frame(firstPlace + i), rgb, i * frameBytes);
        }
        return this;
    }

    /** How many frames it holds. */
    int count() {
        return count;
    }

    /** Copies one of its frames. */
    void copyFrame(int index, byte[] target) {
        System.arraycopy(rgb, index * frameBytes, target, 0, frameBytes);
    }

    /** The place of its first frame in the list. */
    long firstPlace() {
        return firstPlace;
    }
}
