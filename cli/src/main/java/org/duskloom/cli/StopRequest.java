package org.duskloom.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets Ctrl-C end what the current thread does in an orderly way: the thread is interrupted, and the JVM waits a little
 * for it to come to an end.
 */
final class StopRequest {
    private static final long PATIENCE_SECONDS = 3;

    private final Thread worker = Thread.currentThread();
    private final CountDownLatch done = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "stop");

    StopRequest() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void stop() {
        worker.interrupt();
        try {
            done.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException inHaste) {
            Thread.currentThread().interrupt();
        }
    }

    /** What was to be done in order is done. */
    void close() {
        done.countDown();
        forget(hook);
    }

    /** The JVM need not run a hook any more; it does if it is stopping already. */
    static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException stopping) {
            // It may be this very hook by which the current thread was stopped.
            return;
        }
    }
}
