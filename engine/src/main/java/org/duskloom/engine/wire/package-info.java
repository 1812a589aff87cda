/**
 * How pixels hang on the data outputs: ports, the chain of props on each, where their channels lie in universes, and
 * the bytes that a port sends for a frame. Universes and slots count from 1, as on E1.31 receivers; channels and bytes
 * of a port count from 0. Light goes in as sRGB codes and comes out as duty, as codes or bent by a gamma. Stands
 * between the groups, whose addresses a chain is made of, and the display, which holds the ports.
 */
package org.duskloom.engine.wire;
