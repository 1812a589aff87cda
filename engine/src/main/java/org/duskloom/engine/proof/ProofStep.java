package org.duskloom.engine.proof;

import java.util.BitSet;
import java.util.Objects;

/** One step of a proof. Immutable. */
public final class ProofStep {
    private final String caption;
    private final String sight;
    private final int frames;
    private final ProofPaint paint;

    ProofStep(String caption, String sight, int frames, ProofPaint paint) {
        this.caption = Objects.requireNonNull(caption, "caption");
        this.sight = Objects.requireNonNull(sight, "sight");
        this.frames = frames;
        this.paint = paint;
    }

    /** The same with all other pixels dark. */
    ProofStep only(BitSet pixels) {
        return new ProofStep(caption, sight, frames, (share, light) -> {
            paint.paint(share, light);
            light.keep(pixels);
        });
    }

    /** Whether it lights anything at its start, in its middle or at its end. */
    boolean isSeen(int pixelCount) {
        byte[] rgb = new byte[3 * pixelCount];
        for (int frame : new int[] {0, frames / 2, frames - 1}) {
            paint(frame, rgb, 0, rgb.length);
            if (new ProofLight(rgb, 0, rgb.length).isLit()) {
                return true;
            }
        }
        return false;
    }

    /** What it shows, in a few words. */
    public String caption() {
        return caption;
    }

    /** What a person should see, in a sentence without a full stop. */
    public String sight() {
        return sight;
    }

    /** How many frames it has. */
    public int frames() {
        return frames;
    }

    /**
     * Paints one of its frames, counted from 0, over whatever an array holds from one byte up to but not including
     * another.
     */
    void paint(int frame, byte[] rgb, int from, int to) {
        ProofLight light = new ProofLight(rgb, from, to);
        light.fill(0);
        paint.paint((double) frame / frames, light);
    }
}
