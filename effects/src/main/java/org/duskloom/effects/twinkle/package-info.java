/** Pixels that sparkle by themselves. Shares and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.twinkle;
