package org.duskloom.effects.lettering;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Letters in dots, of a file and of the project's own font. */
class GlyphTest {
    private static final BdfBox BOX = new BdfBox(6, 10, 0, -2);

    private static String drawn(Glyph glyph) {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < glyph.height(); row++) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < glyph.width(); column++) {
                line.append(glyph.ink().get(row * glyph.width() + column) ? '#' : '.');
            }
            rows.add(line.toString());
        }
        return String.join(" ", rows);
    }

    @ParameterizedTest
    @CsvSource({"3, 4, '#### #..# ####'", "1, 1, #", "2, 2, '## ##'", "4, 3, '### #.# #.# ###'"})
    void aBoxStandsForALetterThatThereIsNot(int height, int width, String ink) {
        Glyph box = Glyph.box(2, height, width, 1);
        assertThat(drawn(box)).isEqualTo(ink);
        assertThat(box.advance()).isEqualTo(width + 1);
        assertThat(box.top()).isEqualTo(2);
        assertThat(box.right()).isEqualTo(width);
    }

    /** A blank ends where the next letter begins. */
    @Test
    void aBlankIsAsWideAsItsAdvance() {
        assertThat(new Glyph(5, 1, 0, 0, 0, new BitSet()).right()).isEqualTo(5);
        BitSet dot = new BitSet();
        dot.set(0);
        assertThat(new Glyph(5, 1, 0, 2, 2, dot).right()).isEqualTo(3);
    }

    private static BdfFont font(int letterTop, OptionalInt capitals, char... letters) {
        Map<Integer, BdfGlyph> glyphs = new HashMap<>();
        for (char letter : letters) {
            BitSet ink = new BitSet();
            ink.set(0);
            glyphs.put((int) letter, new BdfGlyph(5, new BdfBox(4, letterTop, 1, 0), ink));
        }
        return new BdfFont(BOX, glyphs, capitals);
    }

    /** The base line is 8 rows below the top of a box of 10 rows, 2 of which are under it. */
    @Test
    void lettersStandOnTheBaseLine() {
        BdfFont font = font(7, OptionalInt.empty(), 'H');
        Glyph letter = font.glyph('H');
        assertThat(font.rows()).isEqualTo(10);
        assertThat(letter.top()).isEqualTo(1);
        assertThat(letter.top() + letter.height()).isEqualTo(8);
        assertThat(letter.left()).isEqualTo(1);
        assertThat(letter.advance()).isEqualTo(5);
        assertThat(font.has('H')).isTrue();
        assertThat(font.has('h')).isFalse();
    }

    /** What the file says goes before what is drawn, H before X before 0; without any of them all of the box. */
    @Test
    void capitalsAreAsHighAsIsKnown() {
        assertThat(font(7, OptionalInt.of(6), 'H').capitalRows()).isEqualTo(6);
        assertThat(font(7, OptionalInt.empty(), 'H').capitalRows()).isEqualTo(7);
        assertThat(font(5, OptionalInt.empty(), 'X').capitalRows()).isEqualTo(5);
        assertThat(font(4, OptionalInt.empty(), '0').capitalRows()).isEqualTo(4);
        assertThat(font(4, OptionalInt.empty(), 'a').capitalRows()).isEqualTo(8);
        assertThat(font(7, OptionalInt.of(0), 'H').capitalRows()).isEqualTo(1);
        assertThat(font(7, OptionalInt.of(6), 'H').capitalTop()).isEqualTo(2);
    }

    /** A letter that is missing is a box as high as a capital, five sevenths as wide. */
    @Test
    void whatIsMissingIsABox() {
        Glyph box = font(7, OptionalInt.of(7), 'H').glyph('?');
        assertThat(List.of(box.height(), box.width(), box.top(), box.advance())).containsExactly(7, 5, 1, 6);
    }

    @Test
    void theOwnLettersHaveAGapBehindThem() {
        OwnAlphabet own = new OwnAlphabet();
        for (int letter : IntStream.rangeClosed('A', 'Z').toArray()) {
            Glyph glyph = own.glyph(letter);
            assertThat(own.has(letter)).isTrue();
            assertThat(glyph.advance()).isEqualTo(glyph.width() + 1);
            assertThat(glyph.ink().cardinality()).isPositive();
            int capitalBottom = own.capitalTop() + own.capitalRows();
            int firstInk = glyph.ink().nextSetBit(0) / glyph.width();
            int lastInk = (glyph.ink().length() - 1) / glyph.width();
            assertThat(firstInk).as("top of %c", letter).isEqualTo(own.capitalTop());
            assertThat(lastInk).as("bottom of %c", letter).isBetween(capitalBottom - 1, own.rows() - 1);
        }
    }

    private final Problems problems = new Problems();

    private BdfLines lines(String text) {
        return new BdfLines(text.getBytes(StandardCharsets.ISO_8859_1), "font.bdf", problems);
    }

    @Test
    void commentsAndEmptyLinesArePassedOver() {
        BdfLines lines = lines("STARTFONT 2.1\n\nCOMMENT by hand\n  \nSIZE 7 75 75\n");
        assertThat(lines.next()).isTrue();
        assertThat(lines.is("STARTFONT")).isTrue();
        assertThat(lines.next()).isTrue();
        assertThat(lines.keyword()).isEqualTo("SIZE");
        assertThat(lines.numbers(3, "three"))
                .hasValueSatisfying(values -> assertThat(values).containsExactly(7, 75, 75));
        assertThat(lines.numbers(1, "one"))
                .hasValueSatisfying(values -> assertThat(values).containsExactly(7));
        assertThat(lines.next()).isFalse();
        assertThat(lines.keyword()).isEmpty();
        assertThat(problems.errorCount()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            BBX 4 7 0     | BBX has "4 7 0"
            BBX           | BBX has ""
            BBX 4 7 0 1.5 | BBX has "4 7 0 1.5"
            BBX 4 7 0 x   | BBX has "4 7 0 x"
            BBX 4 7 0 99999999999 | BBX has "4 7 0 99999999999"
            """)
    void saysWhichNumbersAreNeeded(String line, String message) {
        BdfLines lines = lines("\n" + line + "\n");
        lines.next();
        assertThat(lines.numbers(4, "width, height, left and bottom")).isEmpty();
        assertThat(problems.inFileOrder())
                .singleElement()
                .extracting(Problem::toString)
                .asString()
                .startsWith("font.bdf:2")
                .contains(message)
                .contains("it needs width, height, left and bottom");
    }
}
