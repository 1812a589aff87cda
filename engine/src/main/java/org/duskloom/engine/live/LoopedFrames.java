package org.duskloom.engine.live;

import java.io.IOException;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameSpan;

/** Frames of a show, again and again without a seam: after the last one comes the show's first. */
public final class LoopedFrames implements FrameSource {
    private final FrameSource show;
    private final long showFrames;
    private final long firstFrame;
    private final long count;

    /**
     * Frames of a show.
     *
     * @param show where they come from; all of it
     * @param firstFrame which one is first
     * @param times how often the show's last frame comes, at least once
     */
    public LoopedFrames(FrameSource show, long firstFrame, long times) {
        this.show = show;
        this.showFrames = show.info().showFrames();
        this.firstFrame = firstFrame;
        this.count = Math.subtractExact(Math.multiplyExact(showFrames, times), firstFrame);
        if (times < 1 || firstFrame < 0 || firstFrame >= showFrames) {
            throw new IllegalArgumentException(times + " times from frame " + firstFrame + " of " + showFrames);
        }
    }

    /** All of them: numbers go on beyond the show. */
    public FrameList frames() {
        return FrameList.of(new FrameSpan(firstFrame, firstFrame + count));
    }

    /** The number within the show of one of them. */
    public long frameOfShow(long frame) {
        return frame % showFrames;
    }

    @Override
    public RunInfo info() {
        RunInfo info = show.info();
        return new RunInfo(info.title(), info.rate(), frames(), firstFrame + count, info.pixels(), info.steps());
    }

    @Override
    public FrameReader reader() throws IOException {
        FrameReader reader = show.reader();
        return new FrameReader() {
            @Override
            public void read(long frame, byte[] rgb, int offset) throws IOException {
                reader.read(frameOfShow(frame), rgb, offset);
            }

            @Override
            public void close() throws IOException {
                reader.close();
            }
        };
    }
}
