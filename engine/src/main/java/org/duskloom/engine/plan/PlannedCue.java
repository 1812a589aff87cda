package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.time.FrameSpan;

/** A cue as it runs: frame numbers, kernels and where they paint. Immutable. */
public final class PlannedCue {
    private final Fingerprint fingerprint;
    private final FrameSpan frames;
    private final double lengthSeconds;
    private final NumberTrack opacity;
    private final PlannedFade fade;
    private final BlendMode blend;
    private final PlannedCanvas[] canvases;
    private final boolean overlapping;

    PlannedCue(
            Fingerprint fingerprint,
            CueSpan span,
            NumberTrack opacity,
            PlannedFade fade,
            BlendMode blend,
            CanvasSet canvases) {
        this.fingerprint = fingerprint;
        this.frames = span.frames();
        this.lengthSeconds = span.lengthSeconds();
        this.opacity = opacity;
        this.fade = fade;
        this.blend = blend;
        this.canvases = canvases.canvases().toArray(PlannedCanvas[]::new);
        this.overlapping = canvases.overlapping();
    }

    /** When a cue holds. */
    record CueSpan(FrameSpan frames, double lengthSeconds) {}

    /** The canvases of a cue, and whether a pixel is in more than one of them. */
    record CanvasSet(List<PlannedCanvas> canvases, boolean overlapping) {}

    /**
     * What decides the frames of this cue, by value: two cues with the same fingerprint, of one show or of two, give the same
     * light to the same pixels in the same frames, in every run of one version of the program, whatever files they come from
     * and wherever they stand in them. A cue that is written another way may have another fingerprint though it looks the same,
     * where one writes a default and the other does not, or names a part by another name.
     */
    public Fingerprint fingerprint() {
        return fingerprint;
    }

    /** The first frame in which it is seen. */
    public long firstFrame() {
        return frames.firstFrame();
    }

    /** The frame after the last in which it is seen. */
    public long endFrameExclusive() {
        return frames.endFrameExclusive();
    }

    /** Its length in seconds. */
    public double lengthSeconds() {
        return lengthSeconds;
    }

    /**
     * How much of one of its canvases is seen: its opacity times its fade, 0 to 1, both by the clock of the canvas. Before the
     * members of the canvas begin it is what it will be when they do.
     */
    public float opacityAt(PlannedCanvas canvas, long frame) {
        double seconds = Math.max(0, canvas.secondsAt(frame));
        // An easing may overshoot between two keys.
        double own = Math.min(1, Math.max(0, opacity.at(seconds)));
        return (float) (own * fade.at(seconds, lengthSeconds));
    }

    /** How it is mixed with the earlier cues of its layer. */
    public BlendMode blend() {
        return blend;
    }

    /** How many canvases it has. */
    public int canvasCount() {
        return canvases.length;
    }

    /** One of its canvases. */
    public PlannedCanvas canvas(int index) {
        return canvases[index];
    }

    /** Whether a pixel is in more than one of the canvases. */
    public boolean isOverlapping() {
        return overlapping;
    }
}
