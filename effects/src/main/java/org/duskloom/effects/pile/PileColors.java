package org.duskloom.effects.pile;

import org.duskloom.engine.effect.Patch;

/** What colours resting and running lights have. */
interface PileColors {
    /**
     * Goes to an instant.
     *
     * @param lights how many fill the pile
     * @param running the resting place of the running light, counted from the ground
     */
    void begin(int lights, int running);

    /**
     * Paints.
     *
     * @param running how much of each pixel is lit by the running light
     * @param patch its plane {@code first} holds the place of each pixel along the order, {@code third} how much of it is lit
     *     by resting lights
     */
    void paint(float[] running, Patch patch);
}
