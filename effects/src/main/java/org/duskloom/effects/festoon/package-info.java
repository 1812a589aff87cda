/** Swags hung between points. Canvas units and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.festoon;
