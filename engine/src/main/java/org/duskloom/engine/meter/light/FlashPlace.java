package org.duskloom.engine.meter.light;

import java.util.OptionalInt;

/**
 * What flashes: a pixel, or the light of a prop or of the whole display, the mean of its pixels.
 *
 * @param prop the number of the prop in wiring order; nothing for the whole display
 * @param pixel the pixel within the prop, from 0; nothing for the mean of all
 */
public record FlashPlace(OptionalInt prop, OptionalInt pixel) {}
