package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.duskloom.engine.camera.Displays;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.FoundMap;
import org.duskloom.engine.survey.SurveyResult;
import org.junit.jupiter.api.Test;

class FoundMapTest {
    /** Twelve pixels in a ring, the first one on top, then a tail of four downwards: with a part for each. */
    private static final String KITE = """
            "kite": {"build": [
              {"ring": {"count": 12, "radius": 200, "start": 90, "direction": "clockwise"}, "part": "ring"},
              {"line": {"count": 4, "from": [30, -260], "to": [90, -560]}, "part": "tail"}],
              "parts": {"top": "12, 1-2"}}""";

    private static final String PROPS = """
            {"name": "kite-1", "shape": "kite", "at": [0, 2000]},
            {"name": "kite-2", "shape": "kite", "at": [900, 2100]},
            {"name": "kite-3", "shape": "kite", "at": [1800, 2000]}""";

    private static FoundMap found(Built built, SurveyResult result) {
        return FoundMap.of(built.display(), result);
    }

    /** Where nothing was measured is where the entry that survey writes puts it: read as a display of its own. */
    @Test
    void isTheMapOfTheDisplayThatTellsTheTruth() {
        Built built = new Built(Built.display(KITE, PROPS))
                .turn("kite-1", 90, 0, 2000)
                .reverse("kite-3")
                .measure("kite-1", 1, 3, 6, 9, 13, 16)
                .measure("kite-2")
                .measure("kite-3", 1, 2, 4, 5, 8, 11, 14, 16);
        SurveyResult result = Survey.compare(built.display(), built.flat(0, 1), OptionalDouble.of(6));
        FoundMap found = found(built, result);
        Display truly = Built.display(
                KITE,
                PROPS.replace("\"at\": [0, 2000]", "\"at\": [0, 2000], \"turn\": 90")
                        .replace("\"at\": [1800, 2000]", "\"at\": [1800, 2000], \"reverse\": true"));
        assertThat(found.measuredPixels()).isEqualTo(14);
        same(found.map().stage(), truly.map().stage());
        same(found.map().own(), truly.map().own());
        assertThat(found.map().props())
                .extracting(prop -> prop.parts())
                .isEqualTo(
                        truly.map().props().stream().map(prop -> prop.parts()).toList());
    }

    private static void same(Positions positions, Positions expected) {
        for (int i = 0; i < expected.size(); i++) {
            assertThat(positions.x(i)).as("x of %s", i).isCloseTo(expected.x(i), within(1e-6));
            assertThat(positions.y(i)).as("y of %s", i).isCloseTo(expected.y(i), within(1e-6));
            assertThat(positions.z(i)).as("z of %s", i).isCloseTo(expected.z(i), within(1e-6));
        }
    }

    /** What was measured stays to the bit, slips apart. */
    @Test
    void keepsWhatWasMeasuredAndLeavesOutSlips() {
        Built built = Gardens.daisies().built().measure("daisy-6").shift("daisy-2", 7, 300, -200);
        SurveyResult result = built.survey(3, 4);
        FoundMap found = found(built, result);
        assertThat(found.measuredPixels()).isEqualTo(5 * 41 - 1);
        assertThat(found.map().stage().x(0))
                .isEqualTo(result.measured().props().get(0).places().x(0));
        double slipped = found.map().stage().x(41 + 6);
        assertThat(slipped)
                .isCloseTo(built.display().map().stage().x(41 + 6), within(5.0))
                .isNotEqualTo(result.measured().props().get(1).places().x(6));
    }

    /** From a picture taken aside: as the garden truly hangs, to some millimetres, and the depth is as described. */
    @Test
    void comesFromAPictureToo() {
        Built built = new Built(Displays.garden())
                .turn("daisy-3", 90, -2820, 1750)
                .turn("daisy-14", -4, 1710, 2590)
                .reverse("fence");
        Shot shot = Shot.of(built, 5, evening -> evening.near(16));
        FoundMap found = found(built, shot.survey());
        PixelMap described = built.display().map();
        Positions hung = Shot.hung(built);
        assertThat(found.measuredPixels()).isEqualTo(shot.measurements().pixelCount());
        for (int i = 0; i < hung.size(); i++) {
            assertThat(found.map().stage().x(i)).as("x of %s", i).isCloseTo(hung.x(i), within(6.0));
            assertThat(found.map().stage().y(i)).as("y of %s", i).isCloseTo(hung.y(i), within(6.0));
        }
        int pond = described.prop("pond").orElseThrow().firstPixel();
        assertThat(found.map().stage().z(pond)).isEqualTo(described.stage().z(pond));
    }

    @Test
    void keepsMeasuredDepth() {
        Built built = Gardens.daisies().built().move("daisy-1", 0, 0, -250);
        FoundMap found = found(built, built.surveyInSpace(2, 1));
        assertThat(found.map().stage().z(3)).isCloseTo(-250, within(10.0));
        assertThat(found.map().stage().z(50)).isCloseTo(0, within(10.0));
    }
}
