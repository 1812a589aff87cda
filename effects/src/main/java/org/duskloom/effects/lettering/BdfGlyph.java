package org.duskloom.effects.lettering;

import java.util.BitSet;

/**
 * A letter of a BDF file.
 *
 * @param advance in dots
 * @param ink the dots of the box, row by row from the top
 */
record BdfGlyph(int advance, BdfBox box, BitSet ink) {}
