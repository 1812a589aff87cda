/**
 * Places for labels on pictures and sheets: beside what they name, nearer to it than to anything else, over nothing
 * that is there; where there is no such place, away from it, with a line that leads to it. Lengths in any one unit, x
 * to the right, y either way. Used by the packages that draw.
 */
package org.duskloom.engine.label;
