package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.survey.Finding;
import org.duskloom.engine.survey.Slip;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.text.SurveyReport;
import org.junit.jupiter.api.Test;

/** Single measurements that were written down wrongly. */
class SurveySlipTest {
    @Test
    void leavesOutAPixelThatDoesNotGoWithTheOthers() {
        SurveyResult result =
                Gardens.daisies().built().shift("daisy-3", 17, 100, -50).survey(5, 1);
        Finding daisy = Built.finding(result, "daisy-3");
        assertThat(daisy.verdict()).isEqualTo(Verdict.AS_DESCRIBED);
        assertThat(daisy.slips()).hasSize(1);
        assertThat(daisy.slips().get(0).pixel()).isEqualTo(16);
        assertThat(daisy.slips().get(0).distance()).isCloseTo(Math.sqrt(12500), within(15.0));
        assertThat(daisy.measuredPixels()).isEqualTo(40);
        assertThat(SurveyReport.of(result)).contains("daisy-3: pixel 17 was left out: it was measured 1");
    }

    @Test
    void findsTheReadingOfTheOthers() {
        Finding daisy = Built.finding(
                Gardens.daisies()
                        .built()
                        .turn("daisy-3", 40, 2100, 2000)
                        .reverse("daisy-3")
                        .shift("daisy-3", 2, 0, 120)
                        .shift("daisy-3", 30, -150, 0)
                        .survey(5, 1),
                "daisy-3");
        assertThat(daisy.slips()).extracting(Slip::pixel).containsExactlyInAnyOrder(1, 29);
        assertThat(daisy.reading().changes()).hasSize(2);
    }

    /** With errors alone nothing is left out: in 600 daisies of 41 pixels hardly one. */
    @Test
    void leavesOutHardlyAnyGoodMeasurement() {
        int left = 0;
        for (long seed = 1; seed <= 100; seed++) {
            left += Gardens.daisies().built().survey(5, seed).findings().stream()
                    .mapToInt(finding -> finding.slips().size())
                    .sum();
        }
        assertThat(left).isLessThanOrEqualTo(2);
    }

    /** Of four pixels none can be called the wrong one. */
    @Test
    void leavesOutNothingOfFewPixels() {
        Finding daisy = Built.finding(
                Gardens.daisies()
                        .built()
                        .measure("daisy-3", 1, 15, 25, 41)
                        .shift("daisy-3", 15, 90, 0)
                        .survey(5, 1),
                "daisy-3");
        assertThat(daisy.slips()).isEmpty();
        assertThat(daisy.verdict()).isNotEqualTo(Verdict.AS_DESCRIBED);
    }
}
