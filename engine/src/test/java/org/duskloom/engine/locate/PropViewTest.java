package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.junit.jupiter.api.Test;

class PropViewTest {
    private static final double[] X = {0, 1, 2, 0, 1, 2, 0, 1, 2};
    private static final double[] Y = {0, 0, 0, 1, 1, 1, 2, 2, 2};

    /** A square of nine, seen askew; one of them is elsewhere. */
    private static PropView view(Candidates candidates, Positions own) {
        return PropView.of(IntStream.range(0, 9).toArray(), candidates, own);
    }

    private static Candidates seen(int moved, double by) {
        List<Blob> blobs = new ArrayList<>();
        for (int pixel = 0; pixel < 9; pixel++) {
            Blob blob = new Blob(pixel);
            blob.x = 50 + 8 * X[pixel] - 3 * Y[pixel] + (pixel == moved ? by : 0);
            blob.y = 90 + 2 * X[pixel] - 9 * Y[pixel];
            blob.flux = 1;
            blobs.add(blob);
        }
        return Candidates.of(blobs, 9);
    }

    /** The prop is flat, so that nothing is known of its third axis, which does not matter. */
    @Test
    void knowsWhereNeighboursWouldHaveAPixel() {
        Positions own = new Positions(X, Y, new double[9]);
        int[] near = {1, 3, 5, 7};
        assertThat(view(seen(-1, 0), own).strayed(4, near)).isCloseTo(0, within(1e-6));
        assertThat(view(seen(4, 30), own).strayed(4, near)).isCloseTo(30, within(1e-6));
    }

    /** One neighbour that is wrong itself is outvoted. */
    @Test
    void mostNeighboursDecide() {
        Positions own = new Positions(X, Y, new double[9]);
        assertThat(view(seen(1, 3), own).strayed(4, new int[] {0, 1, 2, 3, 5})).isLessThan(1);
    }
}
