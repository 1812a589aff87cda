package org.duskloom.engine.plan;

import java.util.function.Supplier;
import org.duskloom.engine.digest.Fingerprint;

/**
 * Keeps a fingerprint once somebody has asked for it, as of most that is rendered nobody does. Threads that ask at once
 * wait for nobody: each may put it together, and they get equal ones.
 */
final class LazyFingerprint {
    private volatile Fingerprint made;

    /**
     * The fingerprint.
     *
     * @param make puts it together; always the same one
     */
    Fingerprint madeBy(Supplier<Fingerprint> make) {
        Fingerprint known = made;
        if (known == null) {
            known = make.get();
            made = known;
        }
        return known;
    }
}
