/**
 * Fingerprints of values: the same value has the same fingerprint in every run, on every JDK, wherever it was written.
 * Knows only the plain kinds of values; what consists of them adds its parts to a {@link
 * org.duskloom.engine.digest.FingerprintWriter} by itself. Used by everything that decides the frames of a cue.
 */
package org.duskloom.engine.digest;
