package org.duskloom.engine.survey.fit;

/** Whether a fit may only turn, or has to mirror. */
enum Handedness {
    /** A turn: the determinant is 1. */
    PROPER(1),
    /** A turn of the mirror image: the determinant is -1. */
    MIRRORED(-1);

    private final int sign;

    Handedness(int sign) {
        this.sign = sign;
    }

    int sign() {
        return sign;
    }
}
