package org.duskloom.engine.survey.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.Wiring;
import org.duskloom.engine.survey.WiringKind;
import org.duskloom.engine.survey.fit.Built;
import org.duskloom.engine.survey.fit.Gardens;
import org.duskloom.engine.survey.fit.HungDaisy;
import org.duskloom.engine.survey.fit.Survey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PropEntryTest {
    private static final Wiring BACK = new Wiring(WiringKind.FROM_OTHER_END, 0, 41, 40, true);

    private static PlacedProp prop(String... fields) {
        return new Gardens()
                .prop("a \\\"b\\\" \\\\c", "daisy", 100.25, -7, fields)
                .display()
                .props()
                .get(0);
    }

    private static String entry(PlacedProp prop, Placement now, Wiring wiring, Units units) {
        return PropEntry.of(prop, new Reading(List.of(), now, wiring, 0, 0, 0), units);
    }

    @Test
    void keepsWhatIsAsDescribed() {
        PlacedProp prop = prop("\"turn\": 12.345", "\"scale\": 1.23456", "\"reverse\": true", "\"mirror\": \"y\"");
        assertThat(entry(prop, prop.placement(), Wiring.AS_DESCRIBED, Units.MILLIMETRES))
                .isEqualTo(
                        "{\"name\": \"a \\\"b\\\" \\\\c\", \"shape\": \"daisy\", \"at\": [100.25, -7], \"mirror\": \"y\","
                                + " \"scale\": 1.23456, \"turn\": 12.345, \"reverse\": true}");
    }

    @Test
    void roundsWhatIsNew() {
        Placement now = new Placement(Mirror.X, 1.234567, -29.96, 0.04, -0.06, 100.25, 12.3456, 5.55);
        assertThat(entry(prop(), now, BACK, Units.MILLIMETRES))
                .endsWith(
                        "\"at\": [100.25, 12.3, 5.5], \"mirror\": \"x\", \"scale\": 1.2346, \"turn\": -30, \"yaw\": -0.1,"
                                + " \"reverse\": true}");
        assertThat(entry(prop(), now, BACK, Units.METRES)).contains("\"at\": [100.25, 12.3456, 5.55]");
        assertThat(entry(prop(), now, BACK, Units.INCHES)).contains("\"at\": [100.25, 12.35, 5.55]");
    }

    @Test
    void turnsAReversedPropRoundAgain() {
        PlacedProp prop = prop("\"reverse\": true");
        assertThat(entry(prop, prop.placement(), BACK, Units.MILLIMETRES)).doesNotContain("reverse");
    }

    /**
     * A display in which the entries were pasted is as built: surveyed against it with the same measurements, every
     * prop whose difference an entry can say is as described.
     */
    @ParameterizedTest
    @MethodSource("org.duskloom.engine.survey.fit.HungDaisy#cases")
    void pastedEntriesDescribeTheDisplayAsBuilt(HungDaisy shown) {
        Built built = Gardens.daisies().built();
        shown.hands().accept(built);
        Measurements measured = built.flat(5, 1);
        SurveyResult before = Survey.compare(built.display(), measured, OptionalDouble.empty());
        List<String> entries = before.findings().stream()
                .map(finding -> PropEntry.of(finding.prop(), finding.reading(), before.units()))
                .toList();
        Display pasted = Built.display(Gardens.DAISY, String.join(",\n", entries));
        SurveyResult after = Survey.compare(pasted, measured, OptionalDouble.empty());
        boolean writable =
                before.findings().stream().allMatch(finding -> finding.reading().isWritable());
        assertThat(after.findings(Verdict.AS_DESCRIBED)).hasSize(writable ? 6 : 5);
    }
}
