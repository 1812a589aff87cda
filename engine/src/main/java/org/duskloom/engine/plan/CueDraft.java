package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.duskloom.engine.color.BlendMode;

/**
 * A cue that is planned but for how it is mixed, which the scenes decide in which it stands. For one thread.
 */
final class CueDraft {
    private final PlannedCue.Body body;
    private final BitSet pixels;
    private List<GroupDraft> groups = List.of();

    /** @param pixels all that it may light */
    CueDraft(PlannedCue.Body body, BitSet pixels) {
        this.body = body;
        this.pixels = pixels;
    }

    PlannedCue.Body body() {
        return body;
    }

    /** The same, mixed in another way. */
    CueDraft mixed(BlendMode blend, List<PlannedShare> shares) {
        return new CueDraft(body.mixed(blend, shares), pixels);
    }

    /** The first frame in which it is seen. */
    long firstFrame() {
        return body.span().frames().firstFrame();
    }

    /** The frame after the last in which it is seen. */
    long endFrameExclusive() {
        return body.span().frames().endFrameExclusive();
    }

    /** Whether some pixel may be lit by both in some frame. */
    boolean meets(CueDraft other) {
        return Math.max(firstFrame(), other.firstFrame()) < Math.min(endFrameExclusive(), other.endFrameExclusive())
                && pixels.intersects(other.pixels);
    }

    /** Puts a group round those in which it stands. */
    void enclose(GroupDraft group) {
        List<GroupDraft> all = new ArrayList<>(groups.size() + 1);
        all.add(group);
        all.addAll(groups);
        groups = all;
    }

    List<GroupDraft> groups() {
        return groups;
    }

    /** A group as long as it may still be mixed in another way. */
    static final class GroupDraft {
        private final boolean mask;
        private final List<PlannedShare> shares = new ArrayList<>();
        private BlendMode blend;
        private PlannedGroup planned;

        GroupDraft(BlendMode blend, boolean mask) {
            this.blend = blend;
            this.mask = mask;
        }

        boolean mask() {
            return mask;
        }

        void mix(BlendMode word, List<PlannedShare> more) {
            blend = word;
            shares.addAll(more);
        }

        /** The group, the same whenever it is asked for; from then on nothing may change. */
        PlannedGroup planned() {
            if (planned == null) {
                planned = new PlannedGroup(blend, mask, shares);
            }
            return planned;
        }
    }
}
