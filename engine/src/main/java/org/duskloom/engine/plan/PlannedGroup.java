package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;

/** Cues of a layer that are mixed with each other before they are mixed with what is under them. Immutable. */
public final class PlannedGroup implements Fingerprinted {
    private final BlendMode blend;
    private final boolean mask;
    private final List<PlannedShare> shares;

    PlannedGroup(BlendMode blend, boolean mask, List<PlannedShare> shares) {
        this.blend = blend;
        this.mask = mask;
        this.shares = List.copyOf(shares);
    }

    /** How it is mixed with what is under it in the layer; of no effect for a mask. */
    public BlendMode blend() {
        return blend;
    }

    /** Whether its brightness gates what is under it, where and while it has cues. */
    public boolean mask() {
        return mask;
    }

    /** How much of it is seen, 0 to 1. */
    public float opacityAt(long frame) {
        double opacity = 1;
        for (int i = 0; i < shares.size(); i++) {
            opacity *= shares.get(i).at(frame);
        }
        return (float) opacity;
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text(blend.word()).flag(mask).list(shares, FingerprintWriter::value);
    }
}
