/**
 * Pictures of frames, for people to look at: moments side by side as dots where the pixels hang, and the whole run with a
 * line per pixel. Stage coordinates x to the right and y up become picture coordinates x to the right and y down, in
 * dots of the picture from the upper left corner. Colours are sRGB code values; light is added in linear light. Stands
 * last in the flow: takes frames like any sink, writes its files through {@code output}.
 */
package org.duskloom.engine.preview;
