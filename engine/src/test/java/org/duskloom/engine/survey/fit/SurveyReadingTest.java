package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.WiringKind;
import org.duskloom.engine.survey.text.SurveyReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One daisy of six is hung or wired differently; all are measured with errors of 5 mm. */
class SurveyReadingTest {
    private static final double SIGMA = 5;

    @ParameterizedTest
    @MethodSource("org.duskloom.engine.survey.fit.HungDaisy#cases")
    void recognises(HungDaisy shown) {
        Built built = Gardens.daisies().built();
        shown.hands().accept(built);
        for (long seed = 1; seed <= 10; seed++) {
            SurveyResult result = built.survey(SIGMA, seed);
            Finding daisy = Built.finding(result, "daisy-2");
            assertThat(words(daisy.reading().changes())).isEqualTo(shown.found());
            assertThat(daisy.verdict()).isEqualTo(shown.found().isEmpty() ? Verdict.AS_DESCRIBED : Verdict.DIFFERENT);
            assertThat(daisy.rivals()).isEmpty();
            assertThat(daisy.reading().typicalMisfit()).isBetween(5.0, 9.5);
            assertThat(result.findings(Verdict.AS_DESCRIBED))
                    .hasSize(shown.found().isEmpty() ? 6 : 5);
        }
    }

    private static String words(List<Change> changes) {
        return String.join(" ", changes.stream().map(SurveyReadingTest::word).toList());
    }

    private static String word(Change change) {
        if (change instanceof Change.Turned turned) {
            return turned.isQuarter() ? "quarter " + (int) turned.degrees() : "turned";
        }
        if (change instanceof Change.Mirrored mirrored) {
            return "mirrored " + mirrored.now();
        }
        if (change instanceof Change.Rewired rewired) {
            return "rewired " + rewired.wiring().kind();
        }
        return change.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    @Test
    void saysHowFar() {
        Built built = Gardens.daisies().built().turn("daisy-2", -20, 1400, 2000).move("daisy-2", 30, -44);
        Finding daisy = Built.finding(built.survey(SIGMA, 3), "daisy-2");
        Change.Turned turned = (Change.Turned) daisy.reading().changes().get(0);
        Change.Moved moved = (Change.Moved) daisy.reading().changes().get(1);
        assertThat(turned.degrees()).isCloseTo(-20, within(1.5));
        assertThat(moved.dx()).isCloseTo(30, within(4.0));
        assertThat(moved.dy()).isCloseTo(-44, within(4.0));
        assertThat(moved.dz()).isZero();
        Placement now = daisy.reading().placement();
        assertThat(now.turnDegrees()).isCloseTo(10, within(1.5));
        assertThat(now.x()).isCloseTo(1430, within(4.0));
        assertThat(now.y()).isCloseTo(1956, within(4.0));
        assertThat(daisy.estimate().orElseThrow().turnDegrees()).isCloseTo(turned.degrees(), within(1e-9));
        assertThat(daisy.estimate().orElseThrow().dx()).isCloseTo(moved.dx(), within(1e-9));
    }

    @Test
    void saysWhichPixelIsTheFirst() {
        Built built = Gardens.daisies().built().start("daisy-3", 7);
        Change.Rewired rewired = (Change.Rewired) Built.finding(built.survey(SIGMA, 3), "daisy-3")
                .reading()
                .changes()
                .get(0);
        assertThat(rewired.wiring().describedPixel(0)).isEqualTo(7);
        assertThat(rewired.wiring().describedPixel(40)).isEqualTo(6);
    }

    @Test
    void saysHowMuchLarger() {
        Built built = Gardens.daisies().built().resize("daisy-1", 1.15, 700, 2000);
        Finding daisy = Built.finding(built.survey(SIGMA, 4), "daisy-1");
        assertThat(((Change.Resized) daisy.reading().changes().get(0)).factor()).isCloseTo(1.15, within(0.02));
        assertThat(daisy.reading().placement().scale()).isCloseTo(1.15, within(0.02));
    }

    /**
     * The edit that was forgotten: it is described mirrored, upside down and wired from the end, and hangs the other
     * way.
     */
    @Test
    void recognisesThatADescriptionIsNotTrue() {
        Gardens garden = new Gardens()
                .prop("a", "daisy", 0, 0, "\"mirror\": \"x\"")
                .prop("b", "daisy", 800, 0, "\"turn\": 180")
                .prop("c", "daisy", 1600, 0, "\"reverse\": true")
                .prop("d", "daisy", 2400, 0, "\"mirror\": \"y\"")
                .prop("e", "daisy", 3200, 0, "\"scale\": 2");
        Built built = garden.built()
                .mirrorX("a", 0)
                .turn("b", 180, 800, 0)
                .reverse("c")
                .mirrorY("d", 0)
                .resize("e", 0.5, 3200, 0);
        SurveyResult result = built.survey(SIGMA, 1);
        assertThat(placement(result, "a").mirror()).isEqualTo(Mirror.NONE);
        assertThat(placement(result, "b").turnDegrees()).isZero();
        assertThat(Built.finding(result, "c").reading().wiring().kind()).isEqualTo(WiringKind.FROM_OTHER_END);
        assertThat(placement(result, "d").mirror()).isEqualTo(Mirror.NONE);
        assertThat(placement(result, "e").scale()).isCloseTo(1, within(0.02));
        assertThat(result.findings(Verdict.DIFFERENT))
                .hasSize(5)
                .allMatch(finding -> finding.reading().changes().size() == 1);
    }

    private static Placement placement(SurveyResult result, String name) {
        return Built.finding(result, name).reading().placement();
    }

    /**
     * Where a reading puts the pixels is where they were hung, whatever was done: within four standard errors of the
     * fit.
     */
    @ParameterizedTest
    @MethodSource("org.duskloom.engine.survey.fit.HungDaisy#cases")
    void putsThePixelsWhereTheyHang(HungDaisy shown) {
        Built built = Gardens.daisies().built();
        shown.hands().accept(built);
        Finding daisy = Built.finding(built.survey(SIGMA, 2), "daisy-2");
        MeasuredProp exact = built.flat(0, 0).props().get(1);
        Misfits misfits = new Misfits(daisy.reading().places(daisy.prop()), exact, Dimensions.FLAT);
        assertThat(misfits.distance(misfits.worst())).isLessThan(4 * SIGMA * Math.sqrt(4 / 41.0) * 2);
    }

    /** Exact measurements are no trouble. */
    @ParameterizedTest
    @MethodSource("org.duskloom.engine.survey.fit.HungDaisy#cases")
    void takesExactMeasurements(HungDaisy shown) {
        Built built = Gardens.daisies().built();
        shown.hands().accept(built);
        Finding daisy = Built.finding(built.survey(0, 0), "daisy-2");
        assertThat(words(daisy.reading().changes())).isEqualTo(shown.found());
        assertThat(daisy.reading().largestMisfit()).isLessThan(1e-6);
    }

    /** Six pixels of each daisy are enough for most; which ones is up to whoever holds the tape. */
    @ParameterizedTest
    @ValueSource(ints = {1, 14})
    void makesDoWithAFewPixels(int first) {
        Built built = Gardens.daisies().built().turn("daisy-2", 25, 1400, 2000);
        for (int i = 1; i <= 6; i++) {
            built.measure("daisy-" + i, first, first + 5, first + 9, first + 13, first + 21, 41);
        }
        SurveyResult result = built.survey(SIGMA, 9);
        assertThat(words(Built.finding(result, "daisy-2").reading().changes())).isEqualTo("turned");
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(5);
    }

    /**
     * With errors alone nothing is found that is not there: in 500 gardens of six daisies, some with few pixels, hardly
     * ever.
     */
    @Test
    void findsNothingWhereThereIsNothing() {
        int alarms = 0;
        for (long seed = 1; seed <= 500; seed++) {
            Built built = Gardens.daisies().built();
            built.measure("daisy-1", 1, 16, 22, 31, 41).measure("daisy-5", 3, 8, 14, 20, 29, 34, 38);
            SurveyResult result = built.survey(SIGMA, seed);
            alarms += result.findings(Verdict.AS_DESCRIBED).size() < 6 ? 1 : 0;
        }
        assertThat(alarms).isLessThanOrEqualTo(2);
    }

    /** The same answer on every run, however many threads there are. */
    @Test
    void isTheSameEveryTime() {
        Built built = Gardens.daisies().built().turn("daisy-2", 25, 1400, 2000).swap("daisy-3", "daisy-5");
        String once = SurveyReport.of(built.survey(SIGMA, 1));
        for (int i = 0; i < 5; i++) {
            assertThat(SurveyReport.of(built.survey(SIGMA, 1))).isEqualTo(once);
        }
    }

    /** A prop that is bent, each half its own way, is nothing that a reading says. */
    @Test
    void saysWhereNoReadingFits() {
        Built built = Gardens.daisies().built();
        for (int pixel = 1; pixel <= 20; pixel++) {
            built.shift("daisy-4", pixel, 80, 0);
        }
        Finding daisy = Built.finding(built.survey(SIGMA, 1), "daisy-4");
        assertThat(daisy.verdict()).isEqualTo(Verdict.UNEXPLAINED);
        assertThat(daisy.reading().typicalMisfit()).isGreaterThan(15);
        assertThat(daisy.rivals()).isEmpty();
    }

    /** All props of one display, of every kind of difference, at once. */
    @Test
    void tellsPropsApart() {
        Built built = Gardens.daisies().built();
        built.turn("daisy-1", 90, 700, 2000)
                .reverse("daisy-3")
                .mirrorX("daisy-5", 3500)
                .move("daisy-6", 100, 0);
        SurveyResult result = built.survey(SIGMA, 1);
        Map<String, String> found = new TreeMap<>();
        result.findings(Verdict.DIFFERENT)
                .forEach(finding -> found.put(
                        finding.prop().prop().name(), words(finding.reading().changes())));
        assertThat(found)
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "daisy-1", "quarter 90",
                        "daisy-3", "rewired FROM_OTHER_END",
                        "daisy-5", "mirrored X",
                        "daisy-6", "moved"));
    }
}
