/** Straight bands that cross the canvas. Canvas units, turns and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.sweep;
