/**
 * Time as the timeline writes it and as frames count it. Instants and lengths are {@link
 * org.duskloom.engine.time.ExactTime}, exact fractions of a second; a double appears only where a value leaves for the
 * arithmetic of pixels. Frames are numbered from 0; a span of frames is half-open. Easing curves map progress in [0, 1]
 * to progress.
 *
 * <p>Used by the timeline reader, the plan and the renderer; uses only the packages for problems, documents and CSS
 * syntax.
 */
package org.duskloom.engine.time;
