package org.duskloom.engine.live;

import java.util.concurrent.locks.LockSupport;

/** A clock that never goes back, and a way to wait for it. */
public interface LiveClock {
    /** The system's. */
    LiveClock SYSTEM = new LiveClock() {
        @Override
        public long nanos() {
            return System.nanoTime();
        }

        @Override
        public boolean await(long nanos) {
            for (long left = nanos - nanos(); left > 0; left = nanos - nanos()) {
                if (Thread.currentThread().isInterrupted()) {
                    return false;
                }
                LockSupport.parkNanos(left);
            }
            return true;
        }
    };

    /** The time since some moment. */
    long nanos();

    /** Waits until a time has come; false, and earlier, if the thread is interrupted. */
    boolean await(long nanos);
}
