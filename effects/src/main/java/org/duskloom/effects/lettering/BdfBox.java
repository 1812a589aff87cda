package org.duskloom.effects.lettering;

/**
 * A box in dots, as BDF writes it: its size, and where its lower left corner lies from the origin on the base line.
 *
 * @param bottom rows above the base line; below 0 under it
 */
record BdfBox(int width, int height, int left, int bottom) {
    /** Rows above the base line. */
    int top() {
        return bottom + height;
    }
}
