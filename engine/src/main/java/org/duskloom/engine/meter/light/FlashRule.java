package org.duskloom.engine.meter.light;

/** What counts as a flash. */
public enum FlashRule {
    /** Light that changes by a tenth of full and back. */
    GENERAL,

    /** Saturated red that comes and goes, by the older rule or that of WCAG 2.2: the one that counts more. */
    RED
}
