package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.MeasuredProp;
import org.junit.jupiter.api.Test;

/** How far off measured pixels are, worked out by hand: 3-4-5 and 2-3-6-7. */
class MisfitsTest {
    /** Of five pixels 1, 2 and 4 were measured: off by 5 in the plane, by nothing, and by (2, 3, 6). */
    private static Misfits misfits(Dimensions dimensions) {
        MeasuredProp measured = new MeasuredProp(0, new int[] {1, 2, 4}, Points.deep(3, 4, 0, 0, 2, 0, 2, 7, 6));
        return new Misfits(Points.deep(9, 9, 9, 0, 0, 0, 0, 2, 0, 9, 9, 9, 0, 4, 0), measured, dimensions);
    }

    @Test
    void eachPixelIsComparedWithItsOwnPlace() {
        Misfits misfits = misfits(Dimensions.DEEP);
        assertThat(misfits.distance(0)).isEqualTo(5);
        assertThat(misfits.distance(1)).isZero();
        assertThat(misfits.distance(2)).isEqualTo(7);
        assertThat(misfits.worst()).isEqualTo(2);
        assertThat(misfits.typical()).isCloseTo(Math.sqrt((25 + 49) / 3.0), within(1e-12));
    }

    /** Where depth was not measured, it is nothing that could be wrong: another pixel is the worst then. */
    @Test
    void depthCountsOnlyWhereItWasMeasured() {
        Misfits misfits = misfits(Dimensions.FLAT);
        assertThat(misfits.distance(2)).isCloseTo(Math.sqrt(13), within(1e-12));
        assertThat(misfits.worst()).isZero();
    }
}
