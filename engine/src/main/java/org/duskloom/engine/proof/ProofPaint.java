package org.duskloom.engine.proof;

/** Paints the frames of a step. */
@FunctionalInterface
interface ProofPaint {
    /**
     * Lights the pixels of one instant.
     *
     * @param share how much of the step has gone by, 0 up to but not including 1
     * @param light takes the colours; all pixels are unlit
     */
    void paint(double share, ProofLight light);
}
