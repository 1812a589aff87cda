/** Lights that run along the order of the pixels. Shares and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.chase;
