package org.duskloom.engine.frame;

/**
 * Turns frames into the bytes that an {@link EncodingSink} writes. Used by one thread; keeps nothing that later bytes
 * hang on.
 */
@FunctionalInterface
public interface FrameEncoder {
    /**
     * Encodes a few frames.
     *
     * @param frames some frames of the run, not always those that follow the ones before
     * @param into empty; takes the bytes, in whatever order the sink writes them
     */
    void encode(FrameBatch frames, EncodedBytes into);
}
