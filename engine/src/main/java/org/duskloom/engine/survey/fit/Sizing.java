package org.duskloom.engine.survey.fit;

/** Whether a fit may make larger or smaller. */
enum Sizing {
    /** The scale is 1. */
    KEPT,
    /** Any scale above 0. */
    FREE,
    /** A scale that a prop may have been built at by mistake: a quarter to four times. */
    WITHIN_REASON
}
