package org.duskloom.effects.lettering;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Glyph Bitmap Distribution Format Specification, Version 2.1, Adobe: keywords, boxes and bitmaps as it gives them. */
class BdfReaderTest {
    private final Problems problems = new Problems();

    /** The file {@code twig.bdf}, which is drawn by hand. */
    static byte[] twig() {
        try (InputStream in = BdfReaderTest.class.getResourceAsStream("twig.bdf")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String twigText() {
        return new String(twig(), StandardCharsets.UTF_8);
    }

    private Optional<BdfFont> read(String text) {
        return BdfReader.read(text.getBytes(StandardCharsets.ISO_8859_1), "twig.bdf", problems);
    }

    /** FONTBOUNDINGBOX 5 7 0 -2: five rows above the base line, two below it; CAP_HEIGHT 5. */
    @Test
    void readsTheSizeOfALine() {
        BdfFont font = read(twigText()).orElseThrow();

        assertThat(font.rows()).isEqualTo(7);
        assertThat(font.capitalRows()).isEqualTo(5);
        assertThat(font.capitalTop()).isZero();
        assertThat(problems.inFileOrder()).isEmpty();
    }

    @Test
    void takesTheCapitalHeightFromTheLettersIfItIsNotWritten() {
        BdfFont font = read(twigText()
                        .replace("CAP_HEIGHT 5\n", "")
                        .replace("FONTBOUNDINGBOX 5 7", "FONTBOUNDINGBOX 5 9"))
                .orElseThrow();

        assertThat(font.rows()).isEqualTo(9);
        assertThat(font.capitalRows()).isEqualTo(5);
        assertThat(font.capitalTop()).isEqualTo(2);
    }

    @Test
    void readsLetters() {
        BdfFont font = read(twigText()).orElseThrow();

        assertThat(drawing(font.glyph('H'))).isEqualTo("5: 0,0 #..#/#..#/####/#..#/#..#");
        assertThat(drawing(font.glyph('g'))).isEqualTo("4: 0,2 .##/#.#/.##/..#/##.");
        assertThat(drawing(font.glyph('i'))).isEqualTo("3: 1,0 #/./#/#/#");
        assertThat(drawing(font.glyph(' '))).isEqualTo("3: 0,5 ");
        assertThat(drawing(font.glyph(0x2500))).isEqualTo("10: 0,2 ##########");
    }

    @Test
    void drawsABoxForWhatIsMissing() {
        BdfFont font = read(twigText()).orElseThrow();
        assertThat(drawing(font.glyph('Q'))).isEqualTo("4: 0,0 ###/#.#/#.#/#.#/###");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r"})
    void readsAnyLineEnds(String end) {
        assertThat(read(twigText().replace("\n", end))).isPresent();
    }

    /** Old files have names of people in Latin-1 in their comments. */
    @Test
    void doesNotMindTheEncodingOfComments() {
        assertThat(read(twigText().replace("drawn", "gezeichnet f\u00fcr \u00a9")))
                .isPresent();
    }

    private static String drawing(Glyph glyph) {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < glyph.height(); row++) {
            StringBuilder dots = new StringBuilder();
            for (int column = 0; column < glyph.width(); column++) {
                dots.append(glyph.ink().get(row * glyph.width() + column) ? '#' : '.');
            }
            rows.add(dots.toString());
        }
        return glyph.advance() + ": " + glyph.left() + "," + glyph.top() + " " + String.join("/", rows);
    }

    /** What is changed in the file, in which line that is found, and what is said of it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "STARTFONT 2.1|PIXELFONT 1|1|does not begin with STARTFONT",
                "FONTBOUNDINGBOX 5 7 0 -2|FONTBOUNDINGBOX 5 7|5|FONTBOUNDINGBOX has \"5 7\"",
                "FONTBOUNDINGBOX 5 7 0 -2|FONTBOUNDINGBOX 5 257 0 0|5|5 x 257 dots",
                "FONTBOUNDINGBOX|NOTHING|71|no FONTBOUNDINGBOX",
                "CAP_HEIGHT 5|CAP_HEIGHT five|9|CAP_HEIGHT has \"five\"",
                "ENCODING 72|ENCODING H|20|ENCODING has \"H\"",
                "DWIDTH 5 0|DWIDTH 5|22|DWIDTH has \"5\"",
                "BBX 4 5 0 0|BBX 4 5 0 zero|23|BBX has \"4 5 0 zero\"",
                "BBX 4 5 0 0|BBX -4 5 0 0|23|BBX is -4 x 5 dots",
                "BBX 4 5 0 0|IGNORED|24|BITMAP stands before BBX",
                "BBX 4 5 0 0|BBX 4 6 0 0|30|after 5 of 6 rows",
                "F0|FG|27|a row of 4 dots has \"FG\"",
                "FFC0|FF|69|a row of 10 dots has \"FF\"",
                "ENDFONT||71|ends without ENDFONT",
                "F0\\n90\\n90\\nENDCHAR|F0\\n90\\n90|30|does not end with ENDCHAR",
                "F0\\n90\\n90\\nENDCHAR|F0\\n90\\n90\\nBBX 4 4 0 0\\nENDCHAR|30|BBX stands behind BITMAP"
            })
    void saysWhatIsWrongAndWhere(String text, String replacement, int line, String message) {
        String changed = twigText()
                .replaceFirst(text.replace("\\n", "\n"), replacement == null ? "" : replacement.replace("\\n", "\n"));

        assertThat(read(changed)).isEmpty();
        Problem first = problems.inFileOrder().get(0);
        assertThat(first.message()).contains(message);
        assertThat(first.location().file()).isEqualTo("twig.bdf");
        assertThat(first.location().line()).isEqualTo(line);
    }

    @Test
    void reportsEverythingAtOnce() {
        assertThat(read(twigText()
                        .replace("CAP_HEIGHT 5", "CAP_HEIGHT x")
                        .replace("F0", "ZZ")
                        .replace("C0", "Q0")))
                .isEmpty();
        assertThat(problems.inFileOrder())
                .extracting(problem -> problem.location().line())
                .containsExactly(9, 27, 41, 69);
    }

    /** A wrong size does not hide a wrong row, and is not told again as rows that are missing. */
    @Test
    void looksAtTheRowsOfALetterOfUnknownSize() {
        assertThat(read(twigText().replace("BBX 4 5 0 0", "BBX 4 five 0 0").replace("F0", "ZZ")))
                .isEmpty();
        assertThat(problems.inFileOrder())
                .extracting(Problem::toString)
                .containsExactly(
                        "twig.bdf:23: error: BBX has \"4 five 0 0\"; it needs four whole numbers: width, height, x and y",
                        "twig.bdf:27: error: a row of dots has \"ZZ\"; it needs hexadecimal digits");
    }

    @Test
    void refusesAFontWithoutLetters() {
        assertThat(read("STARTFONT 2.1\nFONTBOUNDINGBOX 1 1 0 0\nENDFONT\n")).isEmpty();
        assertThat(problems.inFileOrder().get(0).message()).contains("no letter");
        assertThat(read("")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void survivesDamage(int seed) {
        Random random = new Random(seed);
        int read = 0;
        for (int round = 0; round < 1000; round++) {
            byte[] damaged = twig();
            for (int flips = 1 + random.nextInt(3); flips > 0; flips--) {
                damaged[random.nextInt(damaged.length)] = (byte) "0123456789ABCF-\n xE".charAt(random.nextInt(19));
            }
            Problems found = new Problems();
            Optional<BdfFont> font = BdfReader.read(damaged, "twig.bdf", found);
            assertThat(font.isEmpty()).isEqualTo(found.hasErrors());
            font.ifPresent(whole -> DotLine.of("Hig Q", whole, 0));
            read += font.isPresent() ? 1 : 0;
        }
        assertThat(read).isBetween(1, 999);
    }

    /**
     * The two letters of the example in the specification, from memory, under another name: a j that begins two dots
     * left of its origin and goes six rows under the base line, and an apostrophe that stands twelve rows above it.
     */
    @Test
    void readsTheExampleOfTheSpecification() {
        BdfFont font = read("""
                STARTFONT 2.1
                COMMENT This is a sample font in 2.1 format.
                FONT -Sample-Sample-Bold-R-Normal--24-240-75-75-P-65-ISO8859-1
                SIZE 24 75 75
                FONTBOUNDINGBOX 9 24 -2 -6
                STARTPROPERTIES 1
                CAP_HEIGHT 18
                ENDPROPERTIES
                CHARS 2
                STARTCHAR j
                ENCODING 106
                SWIDTH 355 0
                DWIDTH 8 0
                BBX 9 22 -2 -6
                BITMAP
                0380\n0380\n0380\n0380\n0000\n0700\n0700\n0700\n0700\n0E00\n0E00
                0E00\n0E00\n0E00\n1C00\n1C00\n1C00\n1C00\n2C00\n7800\nF000\nE000
                ENDCHAR
                STARTCHAR quoteright
                ENCODING 39
                SWIDTH 223 0
                DWIDTH 5 0
                BBX 4 6 2 12
                ATTRIBUTES 01C0
                BITMAP
                70\n70\n70\n60\nE0\nC0
                ENDCHAR
                ENDFONT
                """).orElseThrow();
        assertThat(List.of(font.rows(), font.capitalTop())).containsExactly(24, 0);
        assertThat(drawing(font.glyph('\''))).isEqualTo("5: 2,0 .###/.###/.###/.##./###./##..");
        assertThat(drawing(font.glyph('j')))
                .startsWith("8: -2,2 ......###/......###/")
                .contains("/......###/........./.....###./")
                .endsWith("/..#.##.../.####..../####...../###......");
    }
}
