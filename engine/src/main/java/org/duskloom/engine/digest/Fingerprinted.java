package org.duskloom.engine.digest;

/** What can be taken apart for a fingerprint. Equal values add the same parts, different values different ones. */
public interface Fingerprinted {
    /** Adds all that makes this value what it is. */
    void addTo(FingerprintWriter parts);
}
