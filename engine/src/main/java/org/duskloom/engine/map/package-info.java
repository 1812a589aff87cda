/**
 * Where every pixel hangs, in wiring order, and how pixels form props and parts. Stage coordinates are x to the
 * audience's right, y up, z toward the audience, in whatever unit the display's builder measures; own coordinates are
 * those of the prop's shape before it was placed. A global pixel index counts from 0 over all props, an index within a
 * prop from 0; in files pixels count from 1. Reads and writes the pixel map in CSV; displays build the same {@link
 * org.duskloom.engine.map.PixelMap} by placing shapes. Uses {@code problem} and {@code document}; groups, the planner
 * and the previews read it.
 */
package org.duskloom.engine.map;
