package org.duskloom.engine.frame;

import java.io.IOException;

/** What was thrown on another thread, to be thrown on this one as well. */
public final class ThreadFault {
    private ThreadFault() {}

    /**
     * The same for a caller who is ready for input and output that fail: {@code throw ThreadFault.of(fault)}.
     *
     * @param fault thrown by something that throws nothing else that is checked
     */
    public static IOException of(Throwable fault) {
        if (fault instanceof IOException ready) {
            return ready;
        }
        throw unchecked(fault);
    }

    /**
     * The same for a caller who is not: {@code throw ThreadFault.unchecked(fault)}.
     *
     * @param fault thrown by something that throws nothing checked
     */
    public static RuntimeException unchecked(Throwable fault) {
        if (fault instanceof Error error) {
            throw error;
        }
        return (RuntimeException) fault;
    }
}
