package org.duskloom.engine.file;

/** All outputs in the making in this process, so that a run that is stopped from outside can put them away. */
public final class StagedFiles {
    private StagedFiles() {}

    /**
     * Removes everything that is not final: outputs in the making, and folders that were made for them and are empty.
     * What stood under the final names stays. Writing to an abandoned file fails from then on.
     *
     * @return how many outputs were abandoned
     */
    public static int abandonAll() {
        return Staging.OF_PROCESS.abandonAll();
    }

    /**
     * Has {@link #abandonAll} called when the JVM stops, as it does on SIGINT and SIGTERM. Nothing is begun after that.
     */
    public static void abandonOnShutdown() {
        Runtime.getRuntime().addShutdownHook(new Thread(Staging.OF_PROCESS::stop, "abandon-staged-files"));
    }
}
