package org.duskloom.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.survey.fit.Built;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A prop hangs where it is described and only its pixels are in another order: then every place of it is lit by some
 * pixel as before, and what is said of a place, its part and its own place, goes with it.
 */
class FoundMapWiringTest {
    /** Seven pixels that stand at seven different places, behind three of another prop. */
    private static final Display DISPLAY = Built.display("""
            "row": {"build": [{"line": {"count": 3, "from": [0, 0], "to": [30, 0]}}]},
            "bend": {"build": [{"points": [[0, 0], [9, 1], [20, 5], [31, 4], [40, 16], [52, 3], [61, 8]]}],
                     "parts": {"left": "1-3", "left/tip": "1", "right": "5-7"}}""", """
            {"name": "fence", "shape": "row", "at": [0, 300]},
            {"name": "hedge", "shape": "bend", "at": [100, 0, 40], "turn": 30}""");

    private static final PixelMap DESCRIBED = DISPLAY.map();

    private static FoundMap found(Wiring wiring) {
        PlacedProp hedge = DISPLAY.props().get(1);
        Reading reading = new Reading(List.of(), hedge.placement(), wiring, 0, 0, 0);
        MeasuredProp measured =
                new MeasuredProp(1, new int[] {0}, new Positions(new double[1], new double[1], new double[1]));
        Finding finding = new Finding(
                hedge,
                0,
                Verdict.DIFFERENT,
                0,
                reading,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty());
        return FoundMap.of(
                DISPLAY,
                new SurveyResult(
                        Units.MILLIMETRES,
                        2,
                        Dimensions.FLAT,
                        Optional.empty(),
                        Optional.empty(),
                        new Measurements(List.of(measured), Dimensions.FLAT),
                        new Noise(1, Noise.Source.MEASURED, 3),
                        List.of(finding),
                        List.of(),
                        List.of()));
    }

    private static String place(PixelMap map, int pixel) {
        return String.format(
                Locale.ROOT,
                "%.6f,%.6f,%.6f is %.6f,%.6f,%.6f",
                map.stage().x(pixel),
                map.stage().y(pixel),
                map.stage().z(pixel),
                map.own().x(pixel),
                map.own().y(pixel),
                map.own().z(pixel));
    }

    /** Where the pixels of the hedge with those numbers are, by their places. */
    private static Set<String> places(PixelMap map, IntStream pixels) {
        int first = map.props().get(1).firstPixel();
        return pixels.mapToObj(pixel -> place(map, first + pixel)).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> places(PixelMap map, String part) {
        Part found = map.props().get(1).part(part).orElseThrow();
        return places(map, IntStream.of(found.pixels()));
    }

    @ParameterizedTest
    @CsvSource({
        "AS_DESCRIBED,        0, 0, 0, false",
        "FROM_OTHER_END,      0, 7, 6, true",
        "OTHER_WAY,           0, 7, 0, true",
        "OTHER_START,         0, 7, 3, false",
        "OTHER_WAY_AND_START, 0, 7, 2, true",
        "STRETCH_OTHER_START, 1, 4, 2, false",
        "STRETCH_OTHER_WAY,   2, 5, 4, true"
    })
    void whatIsSaidOfAPlaceGoesWithIt(WiringKind kind, int first, int count, int start, boolean backwards) {
        Wiring wiring = new Wiring(kind, first, count, start, backwards);
        FoundMap found = found(wiring);
        PixelMap map = found.map();
        assertThat(found.measuredPixels()).isZero();
        assertThat(places(map, IntStream.range(0, 7))).isEqualTo(places(DESCRIBED, IntStream.range(0, 7)));
        for (String part : DESCRIBED.props().get(1).partPaths()) {
            assertThat(places(map, part)).as(part).isEqualTo(places(DESCRIBED, part));
        }
        Prop hedge = map.props().get(1);
        assertThat(hedge.partPaths())
                .containsExactlyInAnyOrderElementsOf(DESCRIBED.props().get(1).partPaths());
        assertThat(hedge.name()).isEqualTo("hedge");
        for (int pixel = 0; pixel < 7; pixel++) {
            assertThat(place(map, 3 + pixel)).isEqualTo(place(DESCRIBED, 3 + wiring.describedPixel(pixel)));
        }
        for (int pixel = 0; pixel < 3; pixel++) {
            assertThat(place(map, pixel)).as("the fence").isEqualTo(place(DESCRIBED, pixel));
        }
    }
}
