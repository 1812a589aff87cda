package org.duskloom.engine.label;

/**
 * A label that wants a place.
 *
 * @param span the pixels it names
 * @param width of the label
 * @param height of the label
 * @param clear how far from the middle of the nearest of its pixels it begins
 * @param firstTurns the direction that is tried first, in turns from x toward y
 */
public record LabelWish(Span span, double width, double height, double clear, double firstTurns) {}
