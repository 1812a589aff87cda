package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;

/** Puts together the fingerprints of stretches of a plan: of each, what is seen in it, layer by layer. */
final class StretchFingerprints {
    private final Plan plan;
    private final long stretchFrames;

    private StretchFingerprints(Plan plan, long stretchFrames) {
        this.plan = plan;
        this.stretchFrames = stretchFrames;
    }

    static List<Fingerprint> of(Plan plan, long stretchFrames) {
        if (stretchFrames < 1) {
            throw new IllegalArgumentException(stretchFrames + " frames");
        }
        return new StretchFingerprints(plan, stretchFrames).all();
    }

    private List<Fingerprint> all() {
        int count = Math.toIntExact((plan.frameCount() + stretchFrames - 1) / stretchFrames);
        List<List<Seen>> seen = new ArrayList<>(count);
        for (int stretch = 0; stretch < count; stretch++) {
            seen.add(new ArrayList<>());
        }
        for (PlannedLayer layer : plan.layers()) {
            layer.cues().forEach(cue -> add(new Seen(layer, cue), seen));
        }
        List<Fingerprint> prints = new ArrayList<>(count);
        for (int stretch = 0; stretch < count; stretch++) {
            prints.add(print(stretch * stretchFrames, seen.get(stretch)));
        }
        return prints;
    }

    /** A cue of a layer. */
    private record Seen(PlannedLayer layer, PlannedCue cue) {}

    private void add(Seen seen, List<List<Seen>> stretches) {
        long from = Math.max(0, seen.cue.firstFrame());
        long to = Math.min(plan.frameCount(), seen.cue.endFrameExclusive());
        for (long stretch = from / stretchFrames; stretch * stretchFrames < to; stretch++) {
            stretches.get((int) stretch).add(seen);
        }
    }

    private Fingerprint print(long firstFrame, List<Seen> seen) {
        FingerprintWriter parts = new FingerprintWriter("stretch/1");
        parts.value(plan.rate()).whole(firstFrame);
        parts.whole(Math.min(stretchFrames, plan.frameCount() - firstFrame)).whole(plan.pixelCount());
        Seen before = null;
        for (Seen next : seen) {
            boolean sameLayer = before != null && before.layer == next.layer;
            parts.flag(sameLayer);
            if (!sameLayer) {
                parts.text(next.layer.blend().word());
                parts.number(next.layer.opacity()).flag(next.layer.mask());
            }
            parts.part(next.cue.fingerprint());
            parts.whole(sameLayer ? sharedGroups(before.cue, next.cue) : 0);
            before = next;
        }
        return parts.finish();
    }

    /** In how many groups both stand; a cue's own fingerprint says what groups these are, but not whose else. */
    private static int sharedGroups(PlannedCue one, PlannedCue other) {
        int shared = 0;
        while (shared < one.groupCount() && shared < other.groupCount() && one.group(shared) == other.group(shared)) {
            shared++;
        }
        return shared;
    }
}
