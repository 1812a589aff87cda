package org.duskloom.engine.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.duskloom.engine.digest.Fingerprint;

/**
 * Kernels of a show that is compiled again and again while it is being written: most of them are the same the next
 * time. They are found by value, by the same fingerprints that tell which frames of two plans are the same. What a
 * compilation has not asked for is let go by the next one but one, so a shelf holds no more than two plans do. For one
 * thread.
 */
public final class KernelShelf {
    private final boolean used;
    private Map<Fingerprint, List<SharedKernels.Prepared>> before = Map.of();
    private Map<Fingerprint, List<SharedKernels.Prepared>> now = new HashMap<>();

    /** An empty shelf. */
    public KernelShelf() {
        this(true);
    }

    private KernelShelf(boolean used) {
        this.used = used;
    }

    /** One on which nothing is put, for a show that is compiled once. */
    public static KernelShelf unused() {
        return new KernelShelf(false);
    }

    /** Whether anything that is put there may be asked for later. */
    boolean isUsed() {
        return used;
    }

    /** A compilation begins. */
    void turn() {
        before = now;
        now = new HashMap<>();
    }

    /** What was made under this name, or else is made. What was refused, or hangs on names of parts, is not kept. */
    List<SharedKernels.Prepared> get(Fingerprint name, Supplier<List<SharedKernels.Prepared>> make) {
        List<SharedKernels.Prepared> known = before.getOrDefault(name, now.get(name));
        List<SharedKernels.Prepared> prepared = known == null ? make.get() : known;
        if (prepared.stream().allMatch(SharedKernels.Prepared::hangsOnItsNameAlone)) {
            now.put(name, prepared);
        }
        return prepared;
    }
}
