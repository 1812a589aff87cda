package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineTableTest {
    private static final String[] PIECES = {"a", "é", "\n", "\r", "\r\n", "\ud83c\udf3c", "long run of letters", "\n\n"
    };

    /**
     * The judge is the Java library: it splits what stands before the place, and counts the code points of the rest.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void agreesWithCountingFromTheStart(long seed) {
        Random random = new Random(seed);
        StringBuilder built = new StringBuilder();
        while (built.length() < 1_500) {
            built.append(PIECES[random.nextInt(PIECES.length)]);
        }
        String text = built.toString();
        LineTable table = new LineTable(text);
        LineCursor cursor = new LineCursor(source(text));
        LineCursor lineCursor = new LineCursor(source(text));
        for (int offset = 0; offset <= text.length(); offset++) {
            if (isInsideAPair(text, offset)) {
                continue;
            }
            String[] lines = text.substring(0, offset).split("\r\n|\r|\n", -1);
            String last = lines[lines.length - 1];
            assertThat(table.line(offset)).isEqualTo(lines.length);
            assertThat(lineCursor.lineAt(offset)).isEqualTo(lines.length);
            assertThat(table.column(offset)).isEqualTo(last.codePointCount(0, last.length()) + 1);
            assertThat(cursor.at(offset)).isEqualTo(new Location("a.json", table.line(offset), table.column(offset)));
        }
    }

    /** Also where an offset lies far behind the last one, or before it. */
    @Test
    void aCursorFindsTheSamePlacesInAnyOrder() {
        String text = "{\n \"\ud83c\udf3c\": 1,\r\n\r \"é\": 2}";
        SourceText source = source(text);
        LineCursor cursor = new LineCursor(source);
        for (int offset : new int[] {5, 15, 3, 15, 14, text.length(), 0, text.length() + 1}) {
            assertThat(cursor.at(offset)).isEqualTo(source.locationAt(offset));
            assertThat(cursor.lineAt(offset - 1)).isEqualTo(source.lineAt(offset - 1));
        }
    }

    private static SourceText source(String text) {
        return SourceText.of(text.getBytes(StandardCharsets.UTF_8), "a.json", new Problems())
                .orElseThrow();
    }

    /** No place is asked for between CR and LF, or between two surrogates. */
    private static boolean isInsideAPair(String text, int offset) {
        return offset > 0
                && offset < text.length()
                && (text.charAt(offset - 1) == '\r' && text.charAt(offset) == '\n'
                        || Character.isLowSurrogate(text.charAt(offset)));
    }
}
