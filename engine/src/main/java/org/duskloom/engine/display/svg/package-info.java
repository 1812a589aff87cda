/**
 * Drawings as shapes: the circles of an SVG file (W3C SVG 1.1 and 2) become pixels. Works on the text of the file
 * alone: no entities, no document type, no network. Places inside a drawing are in its user units, y down, until the
 * page turns them into millimetres; what is handed out is in millimetres with y up. Stands before {@code display},
 * which asks for it.
 */
package org.duskloom.engine.display.svg;
