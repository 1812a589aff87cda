package org.duskloom.engine.frame;

import java.io.IOException;

/**
 * Where frames come from: a plan that is rendered, a proof, a file of finished frames. Any frame can be had alone and
 * in any order, with the same bytes. Safe for use by several threads.
 */
public interface FrameSource {
    /** What the frames are: all of those that can be had. */
    RunInfo info();

    /**
     * A way to the frames for one thread.
     *
     * @throws IOException if they cannot be reached
     */
    FrameReader reader() throws IOException;
}
