package org.duskloom.engine.effect;

/** An effect compiled for one canvas. Immutable and shared by all threads. */
public interface Kernel {
    /** A brush for one thread; it owns all the memory it needs, so painting allocates nothing. */
    Brush open();
}
