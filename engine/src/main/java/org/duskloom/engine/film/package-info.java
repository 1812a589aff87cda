/**
 * Shows in motion, for eyes: animated PNG, video for encoders, and a page that plays a show from a disk. Pictures are
 * drawn by {@code preview}, in dots of the picture from the upper left corner, colours as sRGB codes; times are frames
 * and exact fractions of seconds. Takes frames like any sink; commands know its films as kinds of output.
 */
package org.duskloom.engine.film;
