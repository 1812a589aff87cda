package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Dimensions;
import org.junit.jupiter.api.Test;

/** The sums against the same quantities worked out point by point. */
class MomentsTest {
    @Test
    void givesTheSpreadAboutTheMeans() {
        Random random = new Random(3);
        Positions from = Points.random(random, 9, 50, Dimensions.DEEP);
        Positions to = Points.random(random, 9, 50, Dimensions.DEEP);
        Moments moments = moments(from, to, 0, 9);
        PairSpread direct = PairSpread.aboutMeans(from, to, moments.fromMean(), moments.toMean());
        PairSpread fromSums = moments.aboutMeans();
        assertThat(fromSums.points()).isEqualTo(9);
        assertThat(fromSums.from()).isCloseTo(direct.from(), within(1e-8));
        assertThat(fromSums.to()).isCloseTo(direct.to(), within(1e-8));
        assertThat(fromSums.cross().m10()).isCloseTo(direct.cross().m10(), within(1e-8));
        assertThat(fromSums.cross().m02()).isCloseTo(direct.cross().m02(), within(1e-8));
        assertThat(fromSums.cross().determinant())
                .isCloseTo(
                        direct.cross().determinant(),
                        within(1e-9 * Math.abs(direct.cross().determinant())));
    }

    @Test
    void addsUp() {
        Random random = new Random(4);
        Positions from = Points.random(random, 12, 50, Dimensions.DEEP);
        Positions to = Points.random(random, 12, 50, Dimensions.DEEP);
        PairSpread whole = moments(from, to, 0, 12).aboutOrigin();
        PairSpread sum = moments(from, to, 0, 5).plus(moments(from, to, 5, 12)).aboutOrigin();
        assertThat(sum.points()).isEqualTo(12);
        assertThat(sum.from()).isCloseTo(whole.from(), within(1e-9));
        assertThat(sum.to()).isCloseTo(whole.to(), within(1e-9));
        assertThat(sum.cross().m21()).isCloseTo(whole.cross().m21(), within(1e-9));
    }

    /** Without a turn the match is the trace of the cross products: what is left is the sum of squared distances. */
    @Test
    void tellsWhatIsLeftWithoutATurn() {
        Positions from = Points.flat(0, 0, 1, 0);
        Positions to = Points.flat(0, 3, 1, 4);
        PairSpread fixed = moments(from, to, 0, 2).aboutOrigin();
        assertThat(fixed.left(fixed.cross().m00() + fixed.cross().m11(), Sizing.KEPT))
                .isEqualTo(25);
        PairSpread moved = moments(from, to, 0, 2).aboutMeans();
        // Moved by (0, 3.5) both points are half a unit off.
        assertThat(moved.left(moved.cross().m00() + moved.cross().m11(), Sizing.KEPT))
                .isEqualTo(0.5);
    }

    private static Moments moments(Positions from, Positions to, int first, int end) {
        Moments moments = new Moments();
        for (int i = first; i < end; i++) {
            moments.add(from.x(i), from.y(i), from.z(i), to.x(i), to.y(i), to.z(i));
        }
        return moments;
    }
}
