package org.duskloom.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.document.RecordParts;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.fit.Built;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What was found out is data that others read later: whole, and not to be changed from outside. */
class SurveyRecordsTest {
    private static final PlacedProp ROW = Built.display(
                    "\"row\": {\"build\": [{\"points\": [[0, 0], [10, 0]]}]}",
                    "{\"name\": \"row\", \"shape\": \"row\", \"at\": [0, 0]}")
            .props()
            .get(0);
    private static final Reading READING = new Reading(List.of(), Placement.at(0, 0, 0), Wiring.AS_DESCRIBED, 1, 2, 0);
    private static final CommonMotion.Point ZERO = new CommonMotion.Point(0, 0, 0);
    private static final CommonMotion MOTION = new CommonMotion(List.of("a", "b"), true, 3, 0.1, ZERO, ZERO, ZERO);

    private static Finding finding(Verdict verdict, int pixels) {
        return new Finding(
                ROW,
                pixels,
                verdict,
                0,
                READING,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(new Slip(1, 30)),
                List.of(),
                Optional.of("gate"));
    }

    private static SurveyResult result(List<Finding> findings) {
        MeasuredProp one =
                new MeasuredProp(0, new int[] {0}, new Positions(new double[1], new double[1], new double[1]));
        return new SurveyResult(
                Units.MILLIMETRES,
                1,
                Dimensions.FLAT,
                Optional.empty(),
                Optional.empty(),
                new Measurements(List.of(one), Dimensions.FLAT),
                new Noise(1, Noise.Source.FLOOR, 0),
                findings,
                List.of(new Exchange(List.of("a", "b"))),
                List.of(MOTION));
    }

    static Stream<Record> records() {
        return Stream.of(
                READING,
                finding(Verdict.DIFFERENT, 2),
                result(List.of(finding(Verdict.DIFFERENT, 2))),
                new Measurements(result(List.of()).measured().props(), Dimensions.DEEP, true),
                new CameraStand(1, 2, OptionalDouble.of(3), OptionalDouble.empty(), OptionalDouble.empty()),
                new Change.TookThePlace("gate", true),
                new Change.Mirrored(Mirror.X),
                new Change.Rewired(Wiring.AS_DESCRIBED),
                MOTION,
                new Exchange(List.of("a", "b")),
                new Muddle.Exchanged(List.of(1, 2)),
                new Muddle.OnePlace(List.of(1, 2), 1, 2, 3, 4),
                new Noise(1, Noise.Source.MEASURED, 3),
                new Overall(Overall.Cause.READING, 10, Optional.of("cm"), Overall.Flip.NONE, false),
                new PhotoAlignment(1, 0, true, 3, Optional.empty()),
                new Rival(READING, 3, Optional.empty()),
                new Shortage(Shortage.Kind.ON_A_LINE, 3),
                new Wiring(WiringKind.OTHER_START, 0, 5, 2, false));
    }

    /** Points of a motion are only ever made with it; all else is asked for when it is told, much later. */
    @ParameterizedTest
    @MethodSource("records")
    void nothingIsMissing(Record record) throws ReflectiveOperationException {
        RecordParts.assertNeedsAll(record, CommonMotion.Point.class);
    }

    /** Whoever fills a list again for the next prop must not change what is said of the last. */
    @ParameterizedTest
    @MethodSource("records")
    void listsAreItsOwn(Record record) throws ReflectiveOperationException {
        Object[] values = RecordParts.of(record);
        for (int i = 0; i < values.length; i++) {
            values[i] = values[i] instanceof List<?> list ? new ArrayList<Object>(list) : values[i];
        }
        Record copy = RecordParts.made(record, values);
        assertThat(copy).isEqualTo(record);
        for (Object value : values) {
            if (value instanceof ArrayList<?> list) {
                list.clear();
            }
        }
        assertThat(copy).isEqualTo(record);
    }

    @Test
    void findingsOfAVerdictAreInWiringOrder() {
        SurveyResult result = result(List.of(
                finding(Verdict.DIFFERENT, 5),
                finding(Verdict.AS_DESCRIBED, 4),
                finding(Verdict.DIFFERENT, 3),
                finding(Verdict.UNEXPLAINED, 2)));
        assertThat(result.findings(Verdict.DIFFERENT))
                .extracting(Finding::measuredPixels)
                .containsExactly(5, 3);
        assertThat(result.findings(Verdict.UNEXPLAINED)).hasSize(1);
        assertThat(result.findings(Verdict.UNDETERMINED)).isEmpty();
    }
}
