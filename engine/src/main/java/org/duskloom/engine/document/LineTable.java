package org.duskloom.engine.document;

import java.util.Arrays;

/**
 * Where the lines of a text start, and where its code points outside the basic plane stand, so that line and column of
 * any offset are found without scanning. A line ends with LF, CR LF or CR, in any mixture.
 */
final class LineTable {
    private final int[] lineStarts;
    private final int[] highSurrogates;

    private LineTable(int[] lineStarts, int[] highSurrogates) {
        this.lineStarts = lineStarts;
        this.highSurrogates = highSurrogates;
    }

    static LineTable of(String text) {
        IntList starts = new IntList();
        IntList surrogates = new IntList();
        starts.add(0);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                starts.add(i + 1);
            } else if (Character.isHighSurrogate(c)) {
                surrogates.add(i);
            }
        }
        return new LineTable(starts.toArray(), surrogates.toArray());
    }

    /** Line of an offset, from 1. */
    int line(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** Column of an offset in code points, from 1. */
    int column(int offset) {
        int start = lineStarts[line(offset) - 1];
        return offset - start - (surrogatesBefore(offset) - surrogatesBefore(start)) + 1;
    }

    private int surrogatesBefore(int offset) {
        int found = Arrays.binarySearch(highSurrogates, offset);
        return found >= 0 ? found : -found - 1;
    }

    /** A growing array of ints. */
    private static final class IntList {
        private int[] values = new int[64];
        private int size;

        void add(int value) {
            if (size == values.length) {
                values = Arrays.copyOf(values, size * 2);
            }
            values[size++] = value;
        }

        int[] toArray() {
            return Arrays.copyOf(values, size);
        }
    }
}
