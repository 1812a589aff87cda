/**
 * Pictures of frames, for people to look at: moments side by side as dots where the pixels hang, and the whole run with
 * a line per pixel. Stage coordinates x to the right and y up become picture coordinates x to the right and y down, in
 * dots of the picture from the upper left corner. Colours are sRGB code values; light is added in linear light. Takes
 * frames like any sink, and writes its files through {@code file}; commands know its pictures as kinds of output.
 */
package org.duskloom.engine.preview;
