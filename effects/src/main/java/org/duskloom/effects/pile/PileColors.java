package org.duskloom.effects.pile;

import org.duskloom.engine.effect.Patch;

/** What colours resting and running lights have. */
interface PileColors {
    /**
     * Goes to an instant. Lights are numbered by their resting places, counted from the ground.
     *
     * @param lights how many fill the pile
     * @param running the running light
     * @param firstResting the lowest resting light
     * @param arrived how many rest, on top of each other
     */
    void begin(int lights, int running, int firstResting, int arrived);

    /**
     * Paints.
     *
     * @param firstPixel the canvas pixel of the patch's first cell
     * @param running how much of each pixel is lit by the running light
     * @param patch its plane {@code third} holds how much of each pixel is lit by resting lights
     */
    void paint(int firstPixel, float[] running, Patch patch);
}
