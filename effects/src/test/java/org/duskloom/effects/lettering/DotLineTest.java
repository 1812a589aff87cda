package org.duskloom.effects.lettering;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** Lines of {@code twig.bdf}, set by hand. */
class DotLineTest {
    private static final Alphabet TWIG =
            BdfReader.read(BdfReaderTest.twig(), "twig.bdf", new Problems()).orElseThrow();

    @Test
    void setsLettersByTheirAdvance() {
        assertThat(drawing(DotLine.of("Hig", TWIG, 0))).isEqualTo("""
                #..#..#....
                #..#.......
                ####..#..##
                #..#..#.#.#
                #..#..#..##
                ..........#
                ........##.
                """);
    }

    /** From the first dot to the last: the letter i begins with an empty column, and has one behind it. */
    @Test
    void hasNoMargin() {
        assertThat(DotLine.of("i", TWIG, 0).columns()).isEqualTo(1);
        assertThat(DotLine.of("ii", TWIG, 0).columns()).isEqualTo(4);
        // A space counts at the ends too.
        assertThat(DotLine.of("i ", TWIG, 0).columns()).isEqualTo(5);
        assertThat(DotLine.of(" ", TWIG, 0).columns()).isEqualTo(3);
    }

    @Test
    void spacesLetters() {
        assertThat(DotLine.of("HH", TWIG, 2).columns()).isEqualTo(11);
        assertThat(DotLine.of("HH", TWIG, -3).columns()).isEqualTo(6);
        assertThat(drawing(DotLine.of("HH", TWIG, -5))).startsWith("#..#\n");
        assertThat(DotLine.of("HHH", TWIG, -8).columns()).isEqualTo(10);
    }

    /** The project's own font: capitals of seven rows under two rows for marks; see the file of the font. */
    @Test
    void knowsTheOwnLetters() {
        DotLine line = DotLine.of("LÜ", new OwnAlphabet(), 0);

        assertThat(line.rows()).isEqualTo(11);
        assertThat(line.capitalTop()).isEqualTo(2);
        assertThat(drawing(line)).isEqualTo("""
                .......#.#.
                ...........
                #.....#...#
                #.....#...#
                #.....#...#
                #.....#...#
                #.....#...#
                #.....#...#
                #####..###.
                ...........
                ...........
                """);
    }

    static String drawing(DotLine line) {
        StringBuilder dots = new StringBuilder();
        for (int row = 0; row < line.rows(); row++) {
            for (int column = 0; column < line.columns(); column++) {
                dots.append(line.isLit(column, row) ? '#' : '.');
            }
            dots.append('\n');
        }
        return dots.toString();
    }
}
