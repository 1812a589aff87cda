/**
 * Displays: shapes drawn once in their own axes, and props that place them on the stage. {@link
 * org.duskloom.engine.display.DisplayReader} reads {@code display.json} into the same pixel map and groups that a
 * bare map leads to. Lengths are in the display's unit, angles in degrees, 0 to the right and 90 up, growing
 * counter-clockwise as the audience sees it. In files pixels count from 1, in the code from 0. Uses {@code problem},
 * {@code document}, {@code map} and {@code group}; the plan package reads displays for timelines. JOML is used in
 * {@link org.duskloom.engine.display.PlacementMatrix} only.
 */
package org.duskloom.engine.display;
