/**
 * What eyes get of a show, measured frame by frame beside the rest: how often light and red flash within a second, and
 * how much of the display is used. Light is linear, 1 for white at full; what {@code cap} and {@code white} of a port
 * take away is not counted, since it lowers the brightest white as well.
 */
package org.duskloom.engine.meter.light;
