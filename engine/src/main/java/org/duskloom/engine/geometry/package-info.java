/**
 * Angles in the plane, exact where people draw exactly: in degrees, counter-clockwise, 0 to the right. Uses nothing;
 * displays and effects turn by it, so that a shape that is drawn at a quarter turn and a look that is turned by one
 * give the same values.
 */
package org.duskloom.engine.geometry;
