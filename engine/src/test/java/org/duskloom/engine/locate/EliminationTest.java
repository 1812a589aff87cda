package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EliminationTest {
    /** 4x + 2y + z = 11, 2x + 5y + 3z = 21, x + 3y + 6z = 25: put in 1, 2 and 3. */
    @Test
    void findsTheUnknowns() {
        double[][] rows = {{4, 2, 1, 11}, {2, 5, 3, 21}, {1, 3, 6, 25}};
        assertThat(Elimination.solve(rows)).containsExactly(new double[] {1, 2, 3}, within(1e-12));
        assertThat(Elimination.solve(new double[][] {{4, 2}})).containsExactly(0.5);
    }
}
