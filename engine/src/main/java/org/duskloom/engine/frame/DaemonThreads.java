package org.duskloom.engine.frame;

import java.util.concurrent.ThreadFactory;

/**
 * Makes threads that keep no program from ending.
 *
 * @param name what each is called
 */
public record DaemonThreads(String name) implements ThreadFactory {
    @Override
    public Thread newThread(Runnable task) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }
}
