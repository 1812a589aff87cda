/** Rings that run out from a centre or in to it. Canvas units and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.radiate;
