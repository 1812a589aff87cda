/**
 * Text that crosses the canvas or stands on it. Letters are drawn in dots, from the project's own font or from a BDF
 * file; the line of dots becomes a picture that {@link org.duskloom.effects.kit.area} lays over the lights. Dots are
 * counted from the left and from the top of a line, distances on the stage in canvas units, times in seconds from the
 * start of the cue.
 */
package org.duskloom.effects.lettering;
