package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.Change;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Muddle;
import org.duskloom.engine.survey.Slip;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.WiringKind;
import org.duskloom.engine.survey.text.SurveyReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Measurements that were mixed up when they were written down. */
class SurveyMuddleTest {
    private static final int[] TWELVE = {1, 4, 8, 13, 16, 19, 22, 25, 28, 31, 37, 41};

    /** One daisy of twelve measured pixels, and nothing else. */
    private static Built daisy() {
        return new Gardens().prop("daisy", "daisy", 900, 1500).built().measure("daisy", TWELVE);
    }

    /** The readings of two pixels, from 1, change places. */
    private static Built exchange(Built built, int a, int b) {
        return built.rewire("daisy", i -> i == a - 1 ? b - 1 : i == b - 1 ? a - 1 : i);
    }

    /** All of these pixels, from 1, are measured where the first one is. */
    private static Built fillDown(Built built, Integer... pixels) {
        List<Integer> filled = List.of(pixels);
        return built.rewire("daisy", i -> filled.contains(i + 1) ? filled.get(0) - 1 : i);
    }

    @ParameterizedTest
    @CsvSource({"13, 25", "1, 8", "16, 41", "4, 31", "22, 28"})
    void namesTwoExchangedReadings(int a, int b) {
        SurveyResult result = exchange(daisy(), a, b).survey(4, 1);
        Finding daisy = result.findings().get(0);
        assertThat(daisy.verdict()).isEqualTo(Verdict.AS_DESCRIBED);
        assertThat(daisy.muddles()).containsExactly(new Muddle.Exchanged(List.of(a - 1, b - 1)));
        assertThat(daisy.measuredPixels()).isEqualTo(10);
        assertThat(daisy.slips()).isEmpty();
        assertThat(SurveyReport.of(result))
                .startsWith("measured: 12 pixels of 1 of 1 prop\n")
                .contains("daisy: pixels " + a + " and " + b + " were left out: their readings seem to be exchanged\n");
    }

    /** The other ten tell how it hangs. */
    @Test
    void judgesByTheRest() {
        Built turned = exchange(daisy().turn("daisy", 37, 900, 1500), 13, 25);
        Finding daisy = turned.survey(4, 2).findings().get(0);
        assertThat(daisy.muddles()).containsExactly(new Muddle.Exchanged(List.of(12, 24)));
        assertThat(daisy.reading().changes()).singleElement().isInstanceOf(Change.Turned.class);
        Built reversed = exchange(daisy().reverse("daisy"), 13, 25);
        assertThat(reversed.survey(4, 2).findings().get(0).reading().wiring().kind())
                .isEqualTo(WiringKind.FROM_OTHER_END);
    }

    /** Six pixels are enough, and four of them tell that it is as described. */
    @Test
    void findsTheTwoAmongSix() {
        Finding daisy = exchange(daisy().measure("daisy", 1, 9, 13, 20, 30, 41), 13, 30)
                .survey(3, 1)
                .findings()
                .get(0);
        assertThat(daisy.muddles()).containsExactly(new Muddle.Exchanged(List.of(12, 29)));
        assertThat(daisy.verdict()).isEqualTo(Verdict.AS_DESCRIBED);
    }

    /** Two that are wrong, each in a way of its own, and that hide each other. */
    @Test
    void leavesOutTwoAtOnce() {
        Built built = daisy().shift("daisy", 13, 260, 40).shift("daisy", 25, 250, 30);
        Finding daisy = built.survey(3, 1).findings().get(0);
        assertThat(daisy.verdict()).isEqualTo(Verdict.AS_DESCRIBED);
        assertThat(daisy.slips()).extracting(Slip::pixel).containsExactlyInAnyOrder(12, 24);
        assertThat(daisy.slips().get(0).distance()).isCloseTo(Math.sqrt(260 * 260 + 40 * 40), within(15.0));
    }

    @Test
    void tellsOfReadingsAtOnePlace() {
        SurveyResult result = fillDown(daisy(), 13, 16, 19, 22).survey(0, 1);
        Finding daisy = result.findings().get(0);
        assertThat(daisy.verdict()).isEqualTo(Verdict.AS_DESCRIBED);
        assertThat(daisy.measuredPixels()).isEqualTo(8);
        // Pixel 13 is the top of the ring of 150 mm; from there to pixel 22 are 135 degrees: 106 mm across and 256 mm
        // down at
        // its end, but 150 mm across at 90 degrees, pixel 19. The diagonal of the box: sqrt(150^2 + 256.07^2) = 296.8.
        assertThat(SurveyReport.of(result))
                .contains(
                        "daisy: pixels 13, 16, 19 and 22 were left out: all were measured at (900, 1650), but are described"
                                + " up to 296.8 mm apart\n");
    }

    /** Nothing else was measured: that is no move. */
    @Test
    void takesReadingsAtOnePlaceForNoMove() {
        SurveyResult result = fillDown(daisy().measure("daisy", 13, 16, 19, 22), 13, 16, 19, 22)
                .survey(0, 1);
        Finding daisy = result.findings().get(0);
        assertThat(daisy.verdict()).isEqualTo(Verdict.UNDETERMINED);
        assertThat(daisy.measuredPixels()).isZero();
        assertThat(SurveyReport.of(result))
                .contains("measured: 4 pixels of 1 of 1 prop\n")
                .contains("pixels 13, 16, 19 and 22 were left out: all were measured at")
                .doesNotContain("paste");
    }

    /** Rounded to 100 mm, neighbours come to one place, and nothing is wrong with that. */
    @Test
    void readingsThatAreRoundedAreNotMixedUp() {
        for (int seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            double x = random.nextInt(100);
            Built built = new Gardens().prop("daisy", "daisy", 900 + x, 1500).built();
            MeasuredProp exact = built.flat(0, seed).props().get(0);
            double[][] rounded = new double[3][exact.count()];
            for (int i = 0; i < exact.count(); i++) {
                rounded[0][i] = 100 * Math.rint(exact.places().x(i) / 100);
                rounded[1][i] = 100 * Math.rint(exact.places().y(i) / 100);
            }
            MeasuredProp measured = exact.at(new Positions(rounded[0], rounded[1], rounded[2]));
            Subject subject = new Subject(built.display().props().get(0), measured, Dimensions.FLAT);
            subject.leaveOutSlips(0.01, 15);
            assertThat(subject.muddles()).isEmpty();
        }
    }

    /** Good measurements are hardly ever called mixed up: of 500 props none. */
    @ParameterizedTest
    @ValueSource(ints = {6, 8, 12, 41})
    void findsNothingInGoodMeasurements(int count) {
        for (long seed = 1; seed <= 125; seed++) {
            int[] pixels = new Random(seed)
                    .ints(1, 42)
                    .distinct()
                    .limit(count)
                    .sorted()
                    .toArray();
            Finding daisy =
                    daisy().measure("daisy", pixels).survey(5, seed).findings().get(0);
            assertThat(daisy.muddles()).isEmpty();
        }
    }
}
