package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.problem.TextFormatException;
import org.joml.Vector2d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** From user units to paper: W3C SVG 1.1, sections 7.7 and 7.8; every place is worked out by hand. */
class SvgPageTest {
    private static Vector2d placed(String width, String height, String box, String aspect, double x, double y)
            throws TextFormatException {
        return SvgPage.millimetresFromUser(width, height, box, aspect).transformPosition(new Vector2d(x, y));
    }

    /** A view box of 100 by 50 that begins at (10, 20), seen at its corner and at its other corner. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            200mm | 100mm | -             | 0, 0    | 200, 100
            200mm | 200mm | -             | 0, 50   | 200, 150
            400mm | 100mm | -             | 100, 0  | 300, 100
            400mm | 100mm | xMidYMid meet | 100, 0  | 300, 100
            400mm | 100mm | none          | 0, 0    | 400, 100
            200mm | -     | -             | 0, 0    | 200, 100
            -     | 100mm | -             | 0, 0    | 200, 100
            100%  | 10cm  | -             | 0, 0    | 200, 100
            auto  | 10cm  | -             | 0, 0    | 200, 100
            """)
    void fitsTheViewBox(String width, String height, String aspect, String corner, String other)
            throws TextFormatException {
        assertAt(placed(width, height, "10 20 100 50", aspect, 10, 20), corner);
        assertAt(placed(width, height, "10 20 100 50", aspect, 110, 70), other);
    }

    private static void assertAt(Vector2d place, String expected) {
        String[] xy = expected.split(", ");
        assertThat(place.x).isCloseTo(Double.parseDouble(xy[0]), within(1e-9));
        assertThat(place.y).isCloseTo(Double.parseDouble(xy[1]), within(1e-9));
    }

    /** Without a size on paper a user unit is a px, 96 of which are an inch. */
    @Test
    void takesUnitsForPxWhereNothingSaysMore() throws TextFormatException {
        assertAt(placed(null, null, null, null, 96, 48), "25.4, 12.7");
        assertAt(placed("100mm", "100mm", null, null, 96, 48), "25.4, 12.7");
        assertAt(placed("100%", "100%", "0 0 100 100", null, 96, 48), "25.4, 12.7");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 0 100", "0 0 100 50 7", "0 0 0 50", "0 0 100 -50", ""})
    void refusesAreasThatAreNone(String box) {
        assertThatThrownBy(() -> placed("100mm", "50mm", box, null, 0, 0))
                .isInstanceOf(TextFormatException.class)
                .hasMessageContaining("is no area");
    }

    @Test
    void refusesSizesThatAreNoneAndFitsThatNobodyReads() {
        assertThatThrownBy(() -> placed("0mm", "50mm", "0 0 1 1", null, 0, 0)).hasMessage("the drawing has no size");
        assertThatThrownBy(() -> placed("5mm", "-5mm", "0 0 1 1", null, 0, 0)).hasMessage("the drawing has no size");
        assertThatThrownBy(() -> placed("5mm", "5mm", "0 0 1 1", "xMinYMin", 0, 0))
                .hasMessageContaining("preserveAspectRatio \"xMinYMin\" is not understood");
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "200mm, true",
                "20CM, true",
                "7in, true",
                "10pt, true",
                "1pc, true",
                "4Q, true",
                "100px, false",
                "100, false",
                "50%, false",
                "-, false"
            })
    void knowsWhatIsASizeOnPaper(String length, boolean isOnPaper) {
        assertThat(SvgPage.isOnPaper(length)).isEqualTo(isOnPaper);
    }

    /**
     * Every point of an arc is on the ellipse through both ends, in its own axes (x/rx)² + (y/ry)² = 1: a quarter of a
     * circle of 10 about (0, 0), and half of an ellipse of 20 by 10 that is turned by 30 degrees.
     */
    @Test
    void arcsStayOnTheirEllipse() {
        double[] quarter = SvgArc.pieces(new double[] {10, 0, 10, 10, 0, 0, 10}, false, true, 9);
        assertThat(quarter).hasSize(16);
        for (int i = 0; i < 8; i++) {
            assertThat(Math.hypot(quarter[2 * i], quarter[2 * i + 1])).isCloseTo(10, within(1e-9));
            double angle = Math.toDegrees(Math.atan2(quarter[2 * i + 1], quarter[2 * i]));
            assertThat(angle).as("evenly from 0 to 90 degrees").isCloseTo(10.0 * (i + 1), within(1e-9));
        }
        double cos = Math.cos(Math.toRadians(30));
        double sin = Math.sin(Math.toRadians(30));
        double[] half =
                SvgArc.pieces(new double[] {20 * cos, 20 * sin, 20, 10, 30, -20 * cos, -20 * sin}, true, true, 12);
        for (int i = 0; i < 11; i++) {
            double x = cos * half[2 * i] + sin * half[2 * i + 1];
            double y = cos * half[2 * i + 1] - sin * half[2 * i];
            assertThat(x * x / 400 + y * y / 100).isCloseTo(1, within(1e-9));
        }
    }

    /** Section F.6.6: radii that are too small are made as large as they must be, here 5 for ends that are 10 apart. */
    @Test
    void arcsThatCannotReachGrow() {
        double[] arc = SvgArc.pieces(new double[] {-5, 0, 1, 1, 0, 5, 0}, false, true, 3);
        assertThat(arc).hasSize(4);
        assertThat(Math.hypot(arc[0], arc[1])).isCloseTo(5, within(1e-9));
        assertThat(Math.hypot(arc[2], arc[3])).isCloseTo(5, within(1e-9));
    }
}
