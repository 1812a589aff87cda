package org.duskloom.engine.plan;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.effect.PartFinder;

/**
 * Finds parts, and remembers which pixels were found: of all parts of a display only those count that an effect asks
 * for.
 */
final class RecordedParts implements PartFinder {
    /** Where nothing was looked for. */
    static final Fingerprint NONE = new FingerprintWriter("parts/1").finish();

    private final PartFinder parts;
    /** Null until a part is looked for: most effects look for none, and kernels may keep this. */
    private FingerprintWriter found;

    RecordedParts(PartFinder parts) {
        this.parts = parts;
    }

    @Override
    public Optional<int[]> find(int member, String address) {
        Optional<int[]> pixels = parts.find(member, address);
        found = found == null ? new FingerprintWriter("parts/1") : found;
        found.whole(member).flag(pixels.isPresent()).wholes(pixels.orElse(new int[0]));
        return pixels;
    }

    @Override
    public String memberName(int member) {
        return parts.memberName(member);
    }

    @Override
    public List<String> known(int member) {
        return parts.known(member);
    }

    /** What was found so far; asked once. */
    Fingerprint found() {
        return found == null ? NONE : found.finish();
    }
}
