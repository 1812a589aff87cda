/**
 * Sheets for the person on the ladder: each shape with its numbered pixels and the way of the wire, from the front and
 * from the back, and the stage with the names and turns of its props. A {@link org.duskloom.engine.sheet.Drawing} is a
 * list of strokes in millimetres, x to the right and y up; {@link org.duskloom.engine.sheet.SvgSheet} writes it true to
 * scale, {@link org.duskloom.engine.sheet.PngSheet} as dots. Last in the package order.
 */
package org.duskloom.engine.sheet;
