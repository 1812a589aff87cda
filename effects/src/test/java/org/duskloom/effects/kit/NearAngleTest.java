package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearAngleTest {
    /** Right, up, left, down and the diagonals; just below the way to the right it is a whole turn. */
    @ParameterizedTest
    @CsvSource({
        "1,0,0",
        "0,1,0.25",
        "-1,0,0.5",
        "0,-1,0.75",
        "2,2,0.125",
        "-2,2,0.375",
        "-2,-2,0.625",
        "2,-2,0.875",
        "1,-1e-300,1",
        "1e-200,1e-200,0.125",
        "1e200,-1e200,0.875"
    })
    void countsTurnsFromTheRightUpward(double right, double up, double turns) {
        assertThat(NearAngle.turns(right, up)).isCloseTo(turns, within(1e-15));
    }

    /** Against the arc tangent of StrictMath, all round, near and far from the axes and diagonals. */
    @Test
    void isNearTheArcTangent() {
        Random random = new Random(36);
        double worst = 0;
        for (int i = 0; i < 400_000; i++) {
            double right = random.nextGaussian();
            double up = i % 2 == 0 ? random.nextGaussian() : right * Math.scalb(random.nextGaussian(), -i % 50);
            double exact = StrictMath.atan2(up, right) / (2 * Math.PI);
            double turns = NearAngle.turns(right, up);
            worst = Math.max(worst, Math.abs(turns - (exact < 0 ? exact + 1 : exact)));
        }
        assertThat(worst).isLessThan(NearAngle.ERROR / 10);
    }

    @Test
    void hasNoneAtTheCentre() {
        assertThat(NearAngle.turns(0, 0)).isNaN();
    }
}
