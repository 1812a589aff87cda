/** Arms that turn about a centre. Turns, canvas units and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.spin;
