package org.duskloom.engine.font;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How letters stand beside each other and in their line. */
class PixelFontShapesTest {
    private static final PixelFont FONT = PixelFont.standard();

    private record Dot(int column, int row) {}

    private static List<Dot> dots(String text) {
        List<Dot> dots = new ArrayList<>();
        FONT.draw(text, (column, row) -> dots.add(new Dot(column, row)));
        return dots;
    }

    private static Set<Dot> moved(Set<Dot> dots, int columns) {
        return dots.stream().map(dot -> new Dot(dot.column + columns, dot.row)).collect(Collectors.toSet());
    }

    /** A letter looks the same in every word, one empty column behind the one before. */
    @ParameterizedTest
    @CsvSource({"Al, otment", "fi, l.", "É, ä", "3, 🌼", "' ', x", "ij, ij"})
    void textsAreDrawnBesideEachOther(String before, String after) {
        Set<Dot> both = new HashSet<>(dots(before));
        both.addAll(moved(new HashSet<>(dots(after)), FONT.width(before) + 1));
        assertThat(dots(before + after)).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(both);
        assertThat(FONT.width(before + after)).isEqualTo(FONT.width(before) + 1 + FONT.width(after));
    }

    /** Whoever makes room for a text by its width and {@code ROWS} has room for all of it. */
    @Test
    void nothingIsDrawnOutsideOfItsRoom() {
        for (int point = 0; point <= 0x2200; point++) {
            String letter = Character.toString(point);
            int width = FONT.width(letter);
            assertThat(dots(letter)).allSatisfy(dot -> {
                assertThat(dot.column).as(letter).isBetween(0, width - 1);
                assertThat(dot.row).as(letter).isBetween(0, PixelFont.ROWS - 1);
            });
        }
    }

    /**
     * Unicode Character Database, BidiMirroring.txt: pairs of brackets of which each is the other one in a mirror.
     * Arrows and slashes are not in it: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({"(, )", "<, >", "[, ]", "{, }", "←, →", "/, \\"})
    void mirroredSignsAreMirrored(String left, String right) {
        int width = FONT.width(left);
        Set<Dot> mirrored = dots(left).stream()
                .map(dot -> new Dot(width - 1 - dot.column, dot.row))
                .collect(Collectors.toSet());
        assertThat(new HashSet<>(dots(right))).isEqualTo(mirrored);
    }

    /** In Latin script g, j, p, q and y hang below the line on which letters stand; the others do not. */
    @Test
    void tailsHangBelowTheLine() {
        int line = PixelFont.CAPITAL_ROW + PixelFont.CAPITAL_ROWS;
        for (char letter = 'a'; letter <= 'z'; letter++) {
            boolean hangs = dots(String.valueOf(letter)).stream().anyMatch(dot -> dot.row >= line);
            assertThat(hangs).as("%s", letter).isEqualTo("gjpqy".indexOf(letter) >= 0);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "~", " ", "é", "Å", "°", "…"})
    void hasTheseLetters(String letter) {
        assertThat(FONT.has(letter.codePointAt(0))).isTrue();
    }

    /** Not in the font: a tab, a letter of nobody, half of a pair, a letter of another script, two marks on one. */
    @ParameterizedTest
    @ValueSource(ints = {'\t', 0xE123, 0xD83C, 'д', 'ǖ', 0x10FFFF})
    void aBoxStandsForOthers(int point) {
        assertThat(FONT.has(point)).isFalse();
        assertThat(dots(Character.toString(point))).isEqualTo(dots("\uE123"));
    }

    /** No half of a flower, no space before the dots, and not a letter less than there is room for. */
    @Test
    void asMuchIsKeptAsFits() {
        String name = "a 🌼🌼 b.i ...@";
        int[] points = name.codePoints().toArray();
        for (int columns = 0; columns < FONT.width(name); columns++) {
            String fitted = FONT.fitted(name, columns);
            String kept = fitted.isEmpty() ? "" : fitted.substring(0, fitted.length() - 1);
            assertThat(name).startsWith(kept);
            assertThat(kept).isEqualTo(kept.stripTrailing());
            assertThat(kept.codePoints()).noneMatch(point -> point >= 0xD800 && point <= 0xDFFF);
            for (int count = kept.codePointCount(0, kept.length()) + 1; count < points.length; count++) {
                String longer = new String(points, 0, count).stripTrailing();
                assertThat(longer.equals(kept) || FONT.width(longer + "…") > columns)
                        .as("%s in %s", longer, columns)
                        .isTrue();
            }
        }
    }
}
