package org.duskloom.engine.sound.music;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** J. Foote, ICME 2000, with the board as two open libraries have it, v = 0.5. */
class NoveltyTest {
    @Test
    void boardOfOneHasQuartersAtItsCorners() {
        double[][] board = Novelty.board(1);
        assertThat(board[0]).containsExactly(new double[] {0.25, 0, -0.25}, within(1e-12));
        assertThat(board[1]).containsExactly(new double[] {0, 0, 0}, within(1e-12));
        assertThat(board[2]).containsExactly(new double[] {-0.25, 0, 0.25}, within(1e-12));
    }

    @Test
    void boardOfTwoFadesToItsEdges() {
        double[][] board = Novelty.board(2);
        assertThat(board[4][4]).isCloseTo(0.008319767934005871, within(1e-12));
        assertThat(board[4][3]).isCloseTo(0.037286613017583214, within(1e-12));
        assertThat(board[3][3]).isCloseTo(0.1671070060308277, within(1e-12));
        assertThat(board[3][1]).isCloseTo(-0.1671070060308277, within(1e-12));
    }

    /** Two blocks of eight: the peak is 0.5 where they meet, 0.016639535868 one beside, and the ends are blank. */
    @Test
    void isHighestWhereOneBlockBecomesAnother() {
        double[][] rows = new double[16][];
        for (int n = 0; n < 16; n++) {
            rows[n] = n < 8 ? new double[] {1, 0} : new double[] {0, 1};
        }
        double[] novelty = Novelty.of(rows, 2);
        assertThat(novelty[7]).isCloseTo(0.5, within(1e-9));
        assertThat(novelty[8]).isCloseTo(0.5, within(1e-9));
        assertThat(novelty[6]).isCloseTo(0.016639535868, within(1e-9));
        assertThat(novelty[9]).isCloseTo(0.016639535868, within(1e-9));
        for (int n : new int[] {0, 1, 2, 3, 4, 5, 10, 14, 15}) {
            assertThat(novelty[n]).isCloseTo(0, within(1e-12));
        }
    }
}
