package org.duskloom.engine.font;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PixelFontTest {
    private static final PixelFont FONT = PixelFont.standard();

    /** A character of Unicode's private use area: nobody's letter. */
    private static final String UNKNOWN = "\uE123";

    @Test
    void drawsEveryPrintableCharacterInItsOwnWay() {
        Map<String, String> characterByDrawing = new HashMap<>();
        Stream.concat(
                        IntStream.rangeClosed(0x20, 0x7E).mapToObj(Character::toString),
                        Stream.of("°", "·", "…", "–", "←", "↑", "→", "↓", "µ", "×", "æ", "ø", "ß", "é", "Ö", UNKNOWN))
                .forEach(character -> assertThat(characterByDrawing.put(drawing(character), character))
                        .as("looks like %s", character)
                        .isNull());
    }

    @Test
    void drawsABoxForWhatItDoesNotKnow() {
        assertThat(drawing(UNKNOWN)).isEqualTo("""
                .....
                .....
                #####
                #...#
                #...#
                #...#
                #...#
                #...#
                #####
                .....
                .....
                """);
        assertThat(drawing("\uD83C\uDF3C")).isEqualTo(drawing(UNKNOWN));
    }

    /** Capitals and digits stand on one line and are all equally high, as letters of a line must be. */
    @Test
    void capitalsAndDigitsFillTheirRows() {
        for (char c : "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789".toCharArray()) {
            String[] rows = drawing(String.valueOf(c)).split("\n");
            for (int row = 0; row < PixelFont.ROWS; row++) {
                boolean inside = row >= PixelFont.CAPITAL_ROW && row < PixelFont.CAPITAL_ROW + PixelFont.CAPITAL_ROWS;
                assertThat(rows[row].contains("#")).as("%s row %d", c, row).isEqualTo(inside);
            }
        }
    }

    @Test
    void lettersAreAsWideAsTheyNeed() {
        assertThat(FONT.width("i")).isLessThan(FONT.width("n")).isLessThan(FONT.width("m"));
        assertThat(FONT.width("")).isZero();
        assertThat(FONT.width("ii")).isEqualTo(2 * FONT.width("i") + 1);
        assertThat(FONT.width("12.5 s")).isEqualTo(drawing("12.5 s").indexOf('\n'));
    }

    /** Unicode Standard Annex 15: the canonical decomposition of a marked letter begins with the letter. */
    @ParameterizedTest
    @CsvSource({"é, e", "ü, u", "Ä, A", "ñ, n", "å, a", "Č, C", "ê, e", "ò, o", "ç, c"})
    void marksStandOverOrUnderTheirLetters(String marked, String plain) {
        assertThat(ink(marked))
                .containsAll(ink(plain))
                .hasSizeGreaterThan(ink(plain).size());
    }

    @Test
    void aMarkTakesThePlaceOfTheDot() {
        assertThat(drawing("ï")).isEqualTo("""
                ...
                ...
                #.#
                ...
                .#.
                .#.
                .#.
                .#.
                .#.
                ...
                ...
                """);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 5, 6, 20, 21, 40, 60, 1000})
    void shortensToWhatFits(int columns) {
        String name = "the long fence by the pond";
        String fitted = FONT.fitted(name, columns);
        assertThat(FONT.width(fitted)).isLessThanOrEqualTo(columns);
        if (!fitted.isEmpty() && !fitted.equals(name)) {
            assertThat(fitted).endsWith("…");
            assertThat(name).startsWith(fitted.substring(0, fitted.length() - 1));
        }
        assertThat(fitted.equals(name)).isEqualTo(FONT.width(name) <= columns);
    }

    /** The resource itself: each character has nine rows of one width. */
    @Test
    void theDrawingsAreWellFormed() throws IOException {
        try (InputStream in = PixelFont.class.getResourceAsStream("pixel-font.txt")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            List<String> blocks = List.of(text.split("\n\n"));
            assertThat(blocks).hasSizeGreaterThan(5);
            for (String block : blocks.subList(1, blocks.size())) {
                List<String[]> lines =
                        block.lines().map(line -> line.split(" +")).toList();
                assertThat(lines).hasSize(10);
                assertThat(lines).allMatch(line -> line.length == lines.get(0).length);
                for (int i = 0; i < lines.get(0).length; i++) {
                    int glyph = i;
                    assertThat(lines.subList(1, 10).stream()
                                    .map(line -> line[glyph].length())
                                    .collect(Collectors.toSet()))
                            .as(lines.get(0)[i])
                            .hasSize(1);
                }
            }
        }
    }

    private static String drawing(String text) {
        char[][] rows = new char[PixelFont.ROWS][FONT.width(text)];
        for (char[] row : rows) {
            Arrays.fill(row, '.');
        }
        FONT.draw(text, (column, row) -> rows[row][column] = '#');
        return Stream.of(rows).map(row -> new String(row) + "\n").collect(Collectors.joining());
    }

    private static List<List<Integer>> ink(String text) {
        List<List<Integer>> ink = new ArrayList<>();
        FONT.draw(text, (column, row) -> ink.add(List.of(column, row)));
        return ink;
    }
}
