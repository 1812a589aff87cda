/** Steady colour and gradients. Shares as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.wash;
