package org.duskloom.engine.meter;

import java.io.IOException;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;

/**
 * Keeps the frames of a short run as they come, for meters that look at some of them once more when the run is over: so
 * they are not rendered twice. Of a run that would take too much memory, and of one that leaves out frames, nothing is
 * kept, and its frames are had from where they come from. Stands before such meters and is their source.
 */
public final class KeptFrames implements Meter, FrameSource {
    /** Some 23 minutes of a hundred pixels at 40 frames a second, or 100 seconds of 1,400. */
    private static final long MOST_BYTES = 16L << 20;

    private final FrameSource source;
    private byte[] kept = {};
    private int frameBytes;
    private long framesKept;

    /** @param source where the frames of the run come from */
    public KeptFrames(FrameSource source) {
        this.source = source;
    }

    @Override
    public void begin(RunInfo run) {
        frameBytes = run.frameBytes();
        framesKept = 0;
        long bytes = frameBytes * run.showFrames();
        boolean isWholeShow = run.frames().count() == run.showFrames();
        kept = isWholeShow && bytes <= MOST_BYTES ? new byte[(int) bytes] : new byte[0];
    }

    @Override
    public void frame(long frame, byte[] rgb, int offset) {
        if (kept.length > 0 && frame == framesKept) {
            System.arraycopy(rgb, offset, kept, (int) frame * frameBytes, frameBytes);
            framesKept++;
        }
    }

    @Override
    public RunInfo info() {
        return source.info();
    }

    @Override
    public FrameReader reader() throws IOException {
        return framesKept == info().showFrames() ? this::copy : source.reader();
    }

    private void copy(long frame, byte[] rgb, int offset) {
        System.arraycopy(kept, (int) frame * frameBytes, rgb, offset, frameBytes);
    }
}
