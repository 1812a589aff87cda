/**
 * Pictures as PNG files (W3C PNG, third edition): rows of sRGB codes in, compressed chunks out, through {@code file}.
 */
package org.duskloom.engine.png;
