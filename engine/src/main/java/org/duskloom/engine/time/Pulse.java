package org.duskloom.engine.time;

/** What is counted of music. */
public enum Pulse {
    /** Beats: {@code 8b}. */
    BEAT,
    /** Bars: {@code 2 bars}. */
    BAR
}
