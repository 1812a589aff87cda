package org.duskloom.engine.frame;

/** Is told how far a rendering is. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress SILENT = (done, total) -> {};

    /**
     * So many frames of so many have been handed over. Called often, by one thread at a time: that of the slowest sink.
     */
    void at(long framesDone, long framesTotal);
}
