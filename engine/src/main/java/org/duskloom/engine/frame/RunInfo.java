package org.duskloom.engine.frame;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;

/**
 * What a sink is told before the first frame: how fast the frames follow each other, which of them come, and what their
 * pixels are. The same for a show that is rendered, a proof, and finished frames that are read back.
 *
 * @param title what the frames show, for people; may be empty
 * @param rate frames per second
 * @param frames the frames that come, in the order in which they do
 * @param showFrames how many frames the whole show has, from frame 0 on; those that come are some of them
 * @param pixels the pixels of every frame
 * @param steps stretches of the show that have captions, in order; none for most shows
 */
public record RunInfo(
        String title, FrameRate rate, FrameList frames, long showFrames, FramePixels pixels, List<RunStep> steps) {

    /** @throws IllegalArgumentException if a frame comes that the show does not have */
    public RunInfo {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(pixels, "pixels");
        steps = List.copyOf(steps);
        if (showFrames < 0 || frames.count() > 0 && (frames.first() < 0 || frames.last() >= showFrames)) {
            throw new IllegalArgumentException(frames + " of a show of " + showFrames + " frames");
        }
    }

    /** A run of all frames of a show without captions. */
    public static RunInfo ofWhole(String title, FrameRate rate, long showFrames, FramePixels pixels) {
        return new RunInfo(title, rate, FrameList.of(new FrameSpan(0, showFrames)), showFrames, pixels, List.of());
    }

    /** The same show, but with these frames of it. */
    public RunInfo only(FrameList some) {
        return new RunInfo(title, rate, some, showFrames, pixels, steps);
    }

    /** How many pixels a frame has. */
    public int pixelCount() {
        return pixels.count();
    }

    /** How many bytes a frame has: one each of red, green and blue for every pixel. */
    public int frameBytes() {
        return Math.multiplyExact(3, pixels.count());
    }
}
