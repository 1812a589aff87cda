/** Light that rises to a height, and with a height that follows the music a meter. Shares as in {@code kit}. */
package org.duskloom.effects.gauge;
