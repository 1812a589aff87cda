package org.duskloom.engine.label;

/**
 * The pixels that a label names, by their indices.
 *
 * @param from the first
 * @param toExclusive the one after the last
 */
public record Span(int from, int toExclusive) {
    /** @throws IllegalArgumentException if there is none */
    public Span {
        if (from < 0 || toExclusive <= from) {
            throw new IllegalArgumentException("no pixels from " + from + " to " + toExclusive);
        }
    }

    /** Only one. */
    public static Span of(int pixel) {
        return new Span(pixel, pixel + 1);
    }

    boolean has(int pixel) {
        return from <= pixel && pixel < toExclusive;
    }
}
