package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.map.Positions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepGeometryTest {
    private static final double EPS = 1e-9;

    /** The places as text, each number with at most three decimals. */
    private static String places(String step) {
        Positions pixels = Displays.shape(step).pixels();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < pixels.size(); i++) {
            text.append(i == 0 ? "" : " ").append(place(pixels, i));
        }
        return text.toString();
    }

    private static String place(Positions pixels, int i) {
        String flat = shown(pixels.x(i)) + "," + shown(pixels.y(i));
        return pixels.z(i) == 0 ? flat : flat + "," + shown(pixels.z(i));
    }

    private static String shown(double value) {
        double rounded = Math.rint(value * 1000) / 1000 + 0.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }

    private static double distance(Positions pixels, int a, int b) {
        return SpacingJumps.distance(pixels, a, b);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            "count": 4, "radius": 10                                              ~ 10,0 0,10 -10,0 0,-10
            "count": 4, "radius": 10, "direction": "clockwise"                    ~ 10,0 0,-10 -10,0 0,10
            "count": 4, "radius": 10, "start": 90, "direction": "clockwise"       ~ 0,10 10,0 0,-10 -10,0
            "count": 2, "radius": 10, "start": -90, "centre": [5, 7]              ~ 5,-3 5,17
            "count": 1, "radius": 2.5, "centre": [0, 0, 9]                        ~ 2.5,0,9
            "count": 6, "radius": 2                                               ~ 2,0 1,1.732 -1,1.732 -2,0 -1,-1.732 1,-1.732
            """)
    void ringsStandEvenlyOnACircle(String fields, String expected) {
        assertThat(places("{\"ring\": {" + fields + "}}")).isEqualTo(expected);
    }

    /**
     * The side of a regular polygon of n corners in a circle of radius r is 2r·sin(π/n) (Euclid's chords; closed
     * form).
     */
    @ParameterizedTest
    @CsvSource({"3", "12", "24", "37", "100"})
    void neighboursOnARingAreAChordApart(int count) {
        Positions ring = Displays.shape("{\"ring\": {\"count\": " + count + ", \"radius\": 180, \"start\": 17}}")
                .pixels();
        double chord = 2 * 180 * StrictMath.sin(Math.PI / count);
        for (int i = 0; i < count; i++) {
            assertThat(distance(ring, i, (i + 1) % count)).isCloseTo(chord, within(EPS));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            "count": 3, "radius": 10, "from": 180, "to": 0                 ~ -10,0 0,10 10,0
            "count": 3, "radius": 10, "from": 180, "to": 360               ~ -10,0 0,-10 10,0
            "count": 2, "radius": 10, "from": 0, "to": 90, "centre": [1,2] ~ 11,2 1,12
            "count": 4, "radius": 2, "from": 0, "to": -90                  ~ 2,0 1.732,-1 1,-1.732 0,-2
            """)
    void arcsIncludeTheirEnds(String fields, String expected) {
        assertThat(places("{\"arc\": {" + fields + "}}")).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            {"line": {"from": [0, 0], "to": [10, 0], "count": 3}}                ~ 0,0 5,0 10,0
            {"line": {"from": [1, 2], "to": [4, 2, 6], "count": 4}}              ~ 1,2 2,2,2 3,2,4 4,2,6
            {"points": [[0, 0], [5, -1], [2, 2, 2]]}                             ~ 0,0 5,-1 2,2,2
            {"polyline": {"points": [[0,0],[4,0],[4,2]], "count": 4}}            ~ 0,0 2,0 4,0 4,2
            {"polyline": {"points": [[0,0],[4,0],[4,2]], "count": 3}}            ~ 0,0 3,0 4,2
            {"polyline": {"points": [[0,0],[4,0],[4,2]], "spacing": 2.5}}        ~ 0,0 2.5,0 4,1
            {"polyline": {"points": [[0,0],[4,0],[4,2]], "spacing": 2}}          ~ 0,0 2,0 4,0 4,2
            {"polyline": {"points": [[0,0],[4,0],[4,2]], "spacing": 100}}        ~ 0,0
            {"polyline": {"points": [[0,0],[2,0],[2,2],[0,2]], "count": 4, "closed": true}} ~ 0,0 2,0 2,2 0,2
            {"polyline": {"points": [[0,0],[2,0],[2,2],[0,2]], "spacing": 3, "closed": true}} ~ 0,0 2,1 0,2
            {"polyline": {"points": [[0,0],[2,0],[2,2],[0,2]], "spacing": 4, "closed": true}} ~ 0,0 2,2
            {"polyline": {"points": [[0,0],[0,0],[3,0],[3,0]], "count": 2}}      ~ 0,0 3,0
            """)
    void linesAreMeasuredAlongTheWire(String step, String expected) {
        assertThat(places(step)).isEqualTo(expected);
    }

    /**
     * A triangle of sides 3, 4 and 5 is 12 round (closed form), so 12 pixels are 1 apart and three of them in the
     * corners.
     */
    @Test
    void aClosedLineHasNoPixelTwice() {
        assertThat(places("{\"polyline\": {\"points\": [[0,0],[4,0],[4,3]], \"count\": 12, \"closed\": true}}"))
                .isEqualTo("0,0 1,0 2,0 3,0 4,0 4,1 4,2 4,3 3.2,2.4 2.4,1.8 1.6,1.2 0.8,0.6");
    }

    @Test
    void aLineOfTenthsIsExact() {
        Positions line = Displays.shape("{\"line\": {\"from\": [0, 5], \"to\": [10, 5], \"count\": 11}}")
                .pixels();
        for (int i = 0; i <= 10; i++) {
            assertThat(line.x(i)).isEqualTo(i);
        }
    }

    /** Two rows of three, 10 across and 20 up: columns at -10, 0, 10, rows at -10 and 10. Worked by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            top-left     ~ rows    ~ straight   ~ -10,10 0,10 10,10 -10,-10 0,-10 10,-10
            top-left     ~ rows    ~ serpentine ~ -10,10 0,10 10,10 10,-10 0,-10 -10,-10
            top-right    ~ rows    ~ straight   ~ 10,10 0,10 -10,10 10,-10 0,-10 -10,-10
            bottom-left  ~ rows    ~ serpentine ~ -10,-10 0,-10 10,-10 10,10 0,10 -10,10
            bottom-right ~ rows    ~ straight   ~ 10,-10 0,-10 -10,-10 10,10 0,10 -10,10
            top-left     ~ columns ~ straight   ~ -10,10 -10,-10 0,10 0,-10 10,10 10,-10
            bottom-left  ~ columns ~ serpentine ~ -10,-10 -10,10 0,10 0,-10 10,-10 10,10
            bottom-right ~ columns ~ serpentine ~ 10,-10 10,10 0,10 0,-10 -10,-10 -10,10
            """)
    void gridsBeginInAnyCorner(String corner, String along, String path, String expected) {
        assertThat(places("{\"grid\": {\"rows\": 2, \"columns\": 3, \"spacing\": [10, 20], \"corner\": \"" + corner
                        + "\", \"along\": \"" + along + "\", \"path\": \"" + path + "\"}}"))
                .isEqualTo(expected);
    }

    @Test
    void gridsStandRoundTheirCentre() {
        assertThat(places("{\"grid\": {\"rows\": 1, \"columns\": 2, \"spacing\": 3, \"centre\": [100, 50, 7]}}"))
                .isEqualTo("98.5,50,7 101.5,50,7");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            "count": 2, "pixels": 3, "from": 10, "to": 30                       ~ 10,0 20,0 30,0 -10,0 -20,0 -30,0
            "count": 2, "pixels": 2, "from": 10, "to": 30, "path": "serpentine" ~ 10,0 30,0 -30,0 -10,0
            "count": 4, "pixels": 1, "from": 5, "start": 90, "direction": "clockwise" ~ 0,5 5,0 0,-5 -5,0
            "count": 1, "pixels": 2, "from": 30, "to": 0, "start": 90, "centre": [1, 1] ~ 1,31 1,1
            """)
    void spokesRunBetweenTwoRadii(String fields, String expected) {
        assertThat(places("{\"spokes\": {" + fields + "}}")).isEqualTo(expected);
    }

    /**
     * Half-way up a turn the wire is on the far side; seen from above 90 degrees is away from the audience, so z is
     * negative.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            "count": 5, "radius": 10, "height": 8, "turns": 1                          ~ 10,0 0,2,-10 -10,4 0,6,10 10,8
            "count": 5, "radius": 10, "height": 8, "turns": 1, "direction": "clockwise" ~ 10,0 0,2,10 -10,4 0,6,-10 10,8
            "count": 3, "radius": 10, "height": 8, "turns": 0.5, "start": 90, "centre": [1, 2, 3] ~ 1,2,-7 -9,6,3 1,10,13
            """)
    void helicesWindUpwards(String fields, String expected) {
        assertThat(places("{\"helix\": {" + fields + "}}")).isEqualTo(expected);
    }
}
