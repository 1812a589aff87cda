/**
 * What a builder must know of a show before it is switched on, measured frame by frame: currents in amperes and
 * voltages in volts. Meters see every frame once, beside whatever is written, and keep no more of a long show than of a
 * short one. Stands after the frames; what is made of the figures lies in {@code report}.
 */
package org.duskloom.engine.meter;
