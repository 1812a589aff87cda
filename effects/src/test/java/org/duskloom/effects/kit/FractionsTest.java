package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.random.StableHash;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FractionsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "1, 0",
        "-1, 0",
        "2, 0",
        "3, 0",
        "-7, 0",
        "0.25, 0.25",
        "-0.25, 0.75",
        "0.5, 0.5",
        "1.5, 0.5",
        "-1.5, 0.5",
        "1000.125, 0.125",
        "-1000.125, 0.875",
        "-1e-12, 0.99999994"
    })
    void isTheFractionOfALine(float value, float expected) {
        float[] plane = {value};
        Fractions.ofLine(plane, 1, 0, 0, 1, plane);
        assertThat(plane[0]).isEqualTo(expected);

        plane[0] = value / 4;
        Fractions.ofLine(plane, 4, 0, 0, 1, plane);
        assertThat(plane[0]).isEqualTo(expected);
    }

    /** Against the remainder in double precision; distance round the circle, as 0 and 1 are the same place. */
    @Test
    void isTheFractionOfASum() {
        float[] plane = new float[1];
        for (int i = 0; i < 100_000; i++) {
            float source = StableHash.unitFloat(StableHash.draw(i, 1));
            float offset = 2 * StableHash.unitFloat(StableHash.draw(i, 2)) - 1;
            plane[0] = source;
            Fractions.ofSum(plane, offset, 0, 1, plane);

            double exact = (double) source + offset;
            double apart = Math.abs(plane[0] - (exact - Math.floor(exact)));
            assertThat(plane[0]).isBetween(0f, Math.nextDown(1f));
            assertThat(Math.min(apart, 1 - apart)).isLessThan(4e-7);
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.5, 0.5", "0.25, -0.25", "1, 0", "1, -1", "0, -1", "0, 1", "0.75, 0.25"})
    void isExactlyNoughtAtWholeSums(float source, float offset) {
        float[] plane = {source};
        Fractions.ofSum(plane, offset, 0, 1, plane);

        float sum = source + offset;
        assertThat(plane[0]).isEqualTo(sum - (float) Math.floor(sum));
    }

    /** What was taken away never falls while the source grows: the order that windows rely on. */
    @Test
    void takesAwayWholeNumbersInOrder() {
        float offset = 0.3f;
        int before = 0;
        float source = Math.nextDown(0.7f);
        for (int i = 0; i < 20; i++) {
            int whole = Fractions.wholeOfSum(source, offset);
            assertThat(whole).isGreaterThanOrEqualTo(before);
            before = whole;
            source = Math.nextUp(source);
        }
        assertThat(before).isEqualTo(1);
        assertThat(Fractions.wholeOfSum(0.6999f, offset)).isZero();
    }
}
