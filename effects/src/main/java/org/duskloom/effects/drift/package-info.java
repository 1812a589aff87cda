/** Noise that drifts and changes. Noise cells, shares and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.drift;
