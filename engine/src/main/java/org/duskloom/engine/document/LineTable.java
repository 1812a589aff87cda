package org.duskloom.engine.document;

/**
 * Turns offsets into lines and columns. Notes at every {@value #BLOCK}th character what came before it, so that any
 * place is found by going through one block, however many lines the text has and however long they are. A line ends
 * with LF, CR LF or CR, in any mixture.
 */
final class LineTable {
    private static final int BLOCK = 128;

    private final String text;
    /** Line, from 1, at the start of each block. */
    private final int[] lines;
    /** Where that line starts. */
    private final int[] lineStarts;
    /** How many pairs of surrogates stand before the block; a pair counts where its first half stands. */
    private final int[] pairs;

    LineTable(String text) {
        this.text = text;
        int blocks = text.length() / BLOCK + 1;
        this.lines = new int[blocks];
        this.lineStarts = new int[blocks];
        this.pairs = new int[blocks];
        lines[0] = 1;
        for (int block = 1; block < blocks; block++) {
            int end = block * BLOCK;
            Place before = place(end);
            lines[block] = before.line;
            lineStarts[block] = before.lineStart;
            pairs[block] = pairsBefore(end, block - 1);
        }
    }

    /** Line of an offset, from 1. */
    int line(int offset) {
        return place(offset).line;
    }

    /** Column of an offset in code points, from 1. */
    int column(int offset) {
        int start = place(offset).lineStart;
        int between = pairsBefore(offset, offset / BLOCK) - pairsBefore(start, start / BLOCK);
        return offset - start - between + 1;
    }

    private record Place(int line, int lineStart) {}

    /** Counts on from the last block that starts before the offset. */
    private Place place(int offset) {
        int block = Math.max(0, (offset - 1) / BLOCK);
        int line = lines[block];
        int lineStart = lineStarts[block];
        for (int i = block * BLOCK; i < offset; i++) {
            if (endsLine(text, i)) {
                line++;
                lineStart = i + 1;
            }
        }
        return new Place(line, lineStart);
    }

    /** Whether a line ends with the character at an offset. */
    static boolean endsLine(String text, int offset) {
        char c = text.charAt(offset);
        return c == '\n' || c == '\r' && !(offset + 1 < text.length() && text.charAt(offset + 1) == '\n');
    }

    private int pairsBefore(int offset, int block) {
        int count = pairs[block];
        for (int i = block * BLOCK; i < offset; i++) {
            count += Character.isHighSurrogate(text.charAt(i)) ? 1 : 0;
        }
        return count;
    }
}
