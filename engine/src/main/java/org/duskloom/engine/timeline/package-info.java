/**
 * The timeline as it is written: layers, cues, looks and palettes with their places in the file, times exact, addresses
 * and settings not yet resolved. Knows no effect and no pixel. {@link org.duskloom.engine.timeline.TimelineReader}
 * makes it from JSON; the plan package turns it into what can be rendered.
 */
package org.duskloom.engine.timeline;
