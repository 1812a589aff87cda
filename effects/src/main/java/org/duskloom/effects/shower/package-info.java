/** Drops that fall with tails. Shares and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.shower;
