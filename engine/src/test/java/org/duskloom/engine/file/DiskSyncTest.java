package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How many threads bring files to the disk, seen from the calls that they make. */
class DiskSyncTest {
    private final FileCalls system = new SystemCalls();

    /** How many threads there were at each call. */
    private final List<Integer> threads = Collections.synchronizedList(new ArrayList<>());

    @TempDir
    private Path folder;

    /** The calls of the system; so many files are brought to the disk at the same time, or it fails. */
    private FileCalls together(int files) {
        CyclicBarrier all = new CyclicBarrier(files);
        return (FileCalls) Proxy.newProxyInstance(
                FileCalls.class.getClassLoader(), new Class<?>[] {FileCalls.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("sync")) {
                        meet(all);
                    }
                    try {
                        return method.invoke(system, arguments);
                    } catch (InvocationTargetException fault) {
                        throw fault.getCause();
                    }
                });
    }

    private void meet(CyclicBarrier all) throws IOException {
        try {
            all.await(10, TimeUnit.SECONDS);
            // Others that were started have begun by now.
            Thread.sleep(50);
        } catch (InterruptedException | BrokenBarrierException | TimeoutException alone) {
            throw new IOException(alone);
        }
        String name = Thread.currentThread().getName();
        String pool = name.substring(0, name.lastIndexOf('-') + 1);
        threads.add((int) Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().startsWith(pool))
                .count());
    }

    @Test
    void startsOneForOneFile() throws IOException {
        new TestRun(folder, true).write("a", IfExists.REFUSE, TestRun.process(1, together(1), List.of()));
        assertThat(threads).containsExactly(1);
    }

    /** Two files and their manifest, then three in a folder. */
    @Test
    void startsOneForEachOfSeveral() throws IOException {
        new TestRun(folder, false).write("a", IfExists.REFUSE, TestRun.process(1, together(3), List.of()));
        assertThat(threads).containsExactly(3, 3, 3, 3, 3, 3);
    }
}
