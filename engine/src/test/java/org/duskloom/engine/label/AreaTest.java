package org.duskloom.engine.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AreaTest {
    /** Six wide and four high, its lower left corner at (1, 2). */
    private static final Area AREA = new Area(1, 2, 7, 6);

    /** Areas that only touch have no inner point in common. */
    @ParameterizedTest
    @CsvSource({
        "2, 3, 3, 4, true",
        "0, 0, 9, 9, true",
        "6.9, 5.9, 9, 9, true",
        "-1, -1, 1.1, 2.1, true",
        "7, 2, 9, 6, false",
        "-1, 2, 1, 6, false",
        "1, 6, 7, 8, false",
        "1, 0, 7, 2, false",
        "8, 3, 9, 4, false",
        "3, 7, 4, 8, false"
    })
    void meets(double left, double bottom, double right, double top, boolean meets) {
        Area other = new Area(left, bottom, right, top);
        assertThat(AREA.meets(other)).isEqualTo(meets);
        assertThat(other.meets(AREA)).isEqualTo(meets);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 2, 7, 6, true",
        "2, 3, 3, 4, true",
        "0.9, 3, 3, 4, false",
        "2, 1.9, 3, 4, false",
        "2, 3, 7.1, 4, false",
        "2, 3, 3, 6.1, false"
    })
    void holds(double left, double bottom, double right, double top, boolean holds) {
        assertThat(AREA.holds(new Area(left, bottom, right, top))).isEqualTo(holds);
    }

    @Test
    void hasASizeAndAMiddle() {
        assertThat(AREA.width()).isEqualTo(6);
        assertThat(AREA.height()).isEqualTo(4);
        assertThat(AREA.centreX()).isEqualTo(4);
        assertThat(AREA.centreY()).isEqualTo(4);
        assertThat(AREA.grown(0.5)).isEqualTo(new Area(0.5, 1.5, 7.5, 6.5));
        assertThat(AREA.with(new Area(-1, 3, 2, 9))).isEqualTo(new Area(-1, 2, 7, 9));
        assertThat(Area.round(3, 5, 2)).isEqualTo(new Area(1, 3, 5, 7));
        assertThat(Area.around(3, 5, 2, 8)).isEqualTo(new Area(2, 1, 4, 9));
    }

    /** From a corner by Pythagoras, 3, 4 and 5; from a side straight across; inside nothing. */
    @ParameterizedTest
    @CsvSource({"10, 10, 5", "-2, -2, 5", "4, 8, 2", "-1, 4, 2", "9, 5, 2", "4, 0, 2", "3, 3, 0", "1, 6, 0"})
    void distance(double x, double y, double distance) {
        assertThat(AREA.distanceTo(x, y)).isCloseTo(distance, within(1e-12));
    }

    @Test
    void spansHaveTheirPixels() {
        Span span = new Span(3, 5);
        assertThat(new boolean[] {span.has(2), span.has(3), span.has(4), span.has(5)})
                .containsExactly(false, true, true, false);
        assertThat(Span.of(0)).isEqualTo(new Span(0, 1));
        assertThatThrownBy(() -> new Span(-1, 1)).hasMessage("no pixels from -1 to 1");
        assertThatThrownBy(() -> new Span(2, 2)).hasMessage("no pixels from 2 to 2");
    }

    /** Areas over several cells, left and right of zero; a corner that only touches is free. */
    @Test
    void whatIsTakenIsNotFree() {
        TakenAreas taken = new TakenAreas(4);
        taken.take(new Area(-9, -7, 10, 3));
        assertThat(taken.isFree(new Area(-20, -20, 20, 20))).isFalse();
        assertThat(taken.isFree(new Area(-8.9, -6.9, -8.8, -6.8))).isFalse();
        assertThat(taken.isFree(new Area(9.8, 2.8, 9.9, 2.9))).isFalse();
        assertThat(taken.isFree(new Area(0, -1, 0.1, 0))).isFalse();
        assertThat(taken.isFree(new Area(10, -7, 12, 3))).isTrue();
        assertThat(taken.isFree(new Area(-9, 3, 10, 5))).isTrue();
        assertThat(taken.isFree(new Area(-12, -9, -9, -7))).isTrue();
        assertThat(taken.isFree(new Area(40, 40, 41, 41))).isTrue();
    }

    @Test
    void aLineIsAsLongAsItIs() {
        assertThat(new LabelPlace.Leader(1, 2, 4, -2).length()).isEqualTo(5);
    }
}
