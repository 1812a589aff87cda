package org.duskloom.engine.document;

import org.duskloom.engine.problem.Location;

/**
 * Tells the places of offsets that mostly grow, as a reader meets them: each character is looked at once. What lies
 * before the offset that was asked for last is found by the {@link LineTable}, to the same place. For one thread.
 */
final class LineCursor {
    private final SourceText source;
    private final String text;
    private int offset;
    private int line = 1;
    private int lineStart;
    /** How many pairs of surrogates stand between the start of the line and the offset. */
    private int pairs;

    LineCursor(SourceText source) {
        this.source = source;
        this.text = source.text();
    }

    /** Line and column of an offset, as in {@link SourceText#locationAt}. */
    Location at(int utf16Offset) {
        if (utf16Offset < offset || utf16Offset > text.length()) {
            return source.locationAt(utf16Offset);
        }
        passTo(utf16Offset);
        return new Location(source.shownName(), line, offset - lineStart - pairs + 1);
    }

    /** Line of an offset, from 1, as in {@link SourceText#lineAt}. */
    int lineAt(int utf16Offset) {
        if (utf16Offset < offset || utf16Offset > text.length()) {
            return source.lineAt(utf16Offset);
        }
        passTo(utf16Offset);
        return line;
    }

    private void passTo(int utf16Offset) {
        while (offset < utf16Offset) {
            pass();
        }
    }

    private void pass() {
        if (LineTable.endsLine(text, offset)) {
            line++;
            lineStart = offset + 1;
            pairs = 0;
        } else if (Character.isHighSurrogate(text.charAt(offset))) {
            pairs++;
        }
        offset++;
    }
}
