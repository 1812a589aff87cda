package org.duskloom.engine.effect;

import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.digest.Fingerprinted;

/**
 * Instants of the music at which something hits: its beats, its bars, or markers. They are numbered in order of time.
 * Immutable; asking allocates nothing.
 */
public interface Hits extends Fingerprinted {
    /** The number of the last where there is none. */
    long NEVER = Long.MIN_VALUE;

    /** Nothing hits. */
    Hits NONE = new Hits() {
        @Override
        public long lastAt(long frame) {
            return NEVER;
        }

        @Override
        public long lastBefore(double showSecond) {
            return NEVER;
        }

        @Override
        public double since(long frame, Period.Unit unit) {
            return 0;
        }

        @Override
        public double shareToNext(long frame) {
            return 0;
        }

        @Override
        public boolean isEndless() {
            return false;
        }

        @Override
        public boolean hearsBeats() {
            return false;
        }

        @Override
        public void addTo(FingerprintWriter parts) {
            parts.text("none");
        }
    };

    /** The number of the last one in or before a frame; {@link #NEVER} before the first. */
    long lastAt(long frame);

    /** The number of the last one before a time of the show; {@link #NEVER} if there is none. */
    long lastBefore(double showSecond);

    /** How much time has gone by since the last one. */
    double since(long frame, Period.Unit unit);

    /** How far a frame is on the way from the last one to the next, in [0, 1); 0 behind the last of all. */
    double shareToNext(long frame);

    /** Whether there is always a next one. */
    boolean isEndless();

    /** Whether it hangs on the beats of the music. */
    boolean hearsBeats();
}
