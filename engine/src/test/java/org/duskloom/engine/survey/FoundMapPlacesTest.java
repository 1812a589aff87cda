package org.duskloom.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.survey.fit.Built;
import org.junit.jupiter.api.Test;

/** Findings made up, so that every place of the map can be told from them. */
class FoundMapPlacesTest {
    /** Pixels 10 units apart on a line, the middle two a part with a part of its own. */
    private static final Display ROW = Built.display("""
            "row": {"build": [{"line": {"count": 4, "from": [0, 0], "to": [30, 0]}}],
                    "parts": {"mid": "2-3", "mid/left": "2"}}""", """
            {"name": "a", "shape": "row", "at": [0, 0, 7]},
            {"name": "b", "shape": "row", "at": [0, 100]}""");

    private static final Wiring ROUND = new Wiring(WiringKind.OTHER_START, 0, 4, 1, false);

    private static MeasuredProp measured(int prop, int[] pixels, double[] x, double[] y, double[] z) {
        return new MeasuredProp(prop, pixels, new Positions(x, y, z));
    }

    private static Finding finding(
            int prop, int pixels, Placement now, Wiring wiring, List<Slip> slips, List<Muddle> muddles) {
        PlacedProp described = ROW.props().get(prop);
        return new Finding(
                described,
                pixels,
                Verdict.DIFFERENT,
                0,
                new Reading(List.of(), now, wiring, 0, 0, 0),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                slips,
                muddles,
                Optional.empty());
    }

    private static FoundMap map(Dimensions dimensions, MeasuredProp measured, Finding finding) {
        return FoundMap.of(
                ROW,
                new SurveyResult(
                        Units.MILLIMETRES,
                        2,
                        dimensions,
                        Optional.empty(),
                        Optional.empty(),
                        new Measurements(List.of(measured), dimensions),
                        new Noise(1, Noise.Source.MEASURED, 3),
                        List.of(finding),
                        List.of(),
                        List.of()));
    }

    private static List<Double> at(Positions positions, int pixel) {
        return List.of(positions.x(pixel), positions.y(pixel), positions.z(pixel));
    }

    /** Pixel 1 was measured, pixel 3 exchanged with 4, 2 not at all; b was not measured and stays. */
    @Test
    void takesWhatWasMeasuredAndTheReadingElsewhere() {
        FoundMap found = map(
                Dimensions.FLAT,
                measured(0, new int[] {0, 2, 3}, new double[] {1.5, 88, 99}, new double[] {2.5, 8, 9}, new double[3]),
                finding(
                        0,
                        1,
                        Placement.at(500, 0, 7),
                        Wiring.AS_DESCRIBED,
                        List.of(),
                        List.of(new Muddle.Exchanged(List.of(2, 3)))));
        Positions stage = found.map().stage();
        assertThat(found.measuredPixels()).isEqualTo(1);
        assertThat(at(stage, 0)).as("measured, with the depth described").containsExactly(1.5, 2.5, 7.0);
        assertThat(at(stage, 1)).as("not measured").containsExactly(510.0, 0.0, 7.0);
        assertThat(at(stage, 2)).as("left out").containsExactly(520.0, 0.0, 7.0);
        assertThat(at(stage, 4)).as("another prop").containsExactly(0.0, 100.0, 0.0);
    }

    @Test
    void takesDepthWhereItWasMeasuredAndLeavesSlipsOut() {
        FoundMap found = map(
                Dimensions.DEEP,
                measured(1, new int[] {0, 1}, new double[] {1, 2}, new double[] {3, 4}, new double[] {5, 6}),
                finding(1, 1, Placement.at(0, 100, 0), Wiring.AS_DESCRIBED, List.of(new Slip(1, 50)), List.of()));
        assertThat(at(found.map().stage(), 4)).containsExactly(1.0, 3.0, 5.0);
        assertThat(at(found.map().stage(), 5)).as("a slip").containsExactly(10.0, 100.0, 0.0);
        assertThat(found.measuredPixels()).isEqualTo(1);
    }

    /** Pixel 1 hangs where 2 is described, 4 where 1 is: the part of 2 and 3 has the pixels 1 and 2 now. */
    @Test
    void partsAndOwnPlacesGoWithThePlacesOnTheShape() {
        FoundMap found = map(
                Dimensions.FLAT,
                measured(0, new int[] {0}, new double[] {10}, new double[] {0}, new double[1]),
                finding(0, 0, Placement.at(0, 0, 7), ROUND, List.of(new Slip(0, 1)), List.of()));
        Prop rewired = found.map().props().get(0);
        assertThat(found.map().own().x(0)).isEqualTo(10);
        assertThat(found.map().own().x(3)).isEqualTo(0);
        assertThat(found.map().stage().x(3)).isEqualTo(0);
        Part mid = rewired.part("mid").orElseThrow();
        assertThat(mid.pixels()).containsExactly(0, 1);
        assertThat(mid.child("left").orElseThrow().pixels()).containsExactly(0);
        assertThat(found.map().props().get(1)).isEqualTo(ROW.map().props().get(1));
        assertThat(found.map().propIndex("b")).isEqualTo(OptionalInt.of(1));
    }

    /** With all of them left out the places measured for them do not count. */
    @Test
    void aPropWithoutAGoodMeasurementIsAsItsReadingSays() {
        FoundMap found = map(
                Dimensions.FLAT,
                measured(1, new int[] {2}, new double[] {-77}, new double[] {-77}, new double[1]),
                finding(1, 0, ROW.props().get(1).placement(), Wiring.AS_DESCRIBED, List.of(), List.of()));
        assertThat(found.measuredPixels()).isZero();
        assertThat(found.map().stage()).isEqualTo(ROW.map().stage());
    }
}
