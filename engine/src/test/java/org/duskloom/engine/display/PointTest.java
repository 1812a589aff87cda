package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PointTest {
    private static final Point FROM = new Point(1, 2, 3);

    /** 2, 3 and 6 are the edges of a box whose diagonal is 7 (closed form), whichever way they go. */
    @Test
    void distanceIsTheDiagonalOfABox() {
        assertThat(FROM.distance(new Point(3, 5, 9))).isEqualTo(7);
        assertThat(FROM.distance(new Point(-1, -1, -3))).isEqualTo(7);
        assertThat(FROM.distance(new Point(4, -4, 5))).isEqualTo(7);
        assertThat(FROM.distance(FROM)).isZero();
    }

    @Test
    void aShareOfTheWayGoesAlongAllAxes() {
        Point to = new Point(3, -2, 11);
        assertThat(FROM.toward(to, 0)).isEqualTo(FROM);
        assertThat(FROM.toward(to, 0.25)).isEqualTo(new Point(1.5, 1, 5));
        assertThat(FROM.toward(to, 1)).isEqualTo(to);
    }

    /** Three even steps of (1, -2, 4): the ends are exactly where they were written. */
    @Test
    void evenStepsLeadToTheEnd() {
        Point to = new Point(4, -4, 15);
        assertThat(FROM.toward(to, 0, 3)).isEqualTo(FROM);
        assertThat(FROM.toward(to, 1, 3)).isEqualTo(new Point(2, 0, 7));
        assertThat(FROM.toward(to, 2, 3)).isEqualTo(new Point(3, -2, 11));
        assertThat(FROM.toward(to, 3, 3)).isEqualTo(to);
    }
}
