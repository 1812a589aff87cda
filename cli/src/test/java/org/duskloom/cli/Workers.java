package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Tries many things, as many at a time as there are processors. */
final class Workers {
    private Workers() {}

    /** Something to try. */
    @FunctionalInterface
    interface Trial<T> {
        void run(T thing) throws Exception;
    }

    /** What went wrong with which of them. */
    static <T> List<String> faultsOf(List<T> things, Trial<T> trial) throws Exception {
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Future<Optional<String>>> running = new ArrayList<>();
            for (T thing : things) {
                running.add(threads.submit(() -> faultOf(thing, trial)));
            }
            List<String> faults = new ArrayList<>();
            for (Future<Optional<String>> each : running) {
                each.get().ifPresent(faults::add);
            }
            return faults;
        } finally {
            threads.shutdownNow();
        }
    }

    private static <T> Optional<String> faultOf(T thing, Trial<T> trial) {
        try {
            trial.run(thing);
            return Optional.empty();
        } catch (Exception | AssertionError fault) {
            return Optional.of(thing + ": " + fault);
        }
    }
}
