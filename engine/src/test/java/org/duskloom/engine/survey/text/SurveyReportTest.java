package org.duskloom.engine.survey.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.duskloom.engine.survey.fit.Built;
import org.duskloom.engine.survey.fit.Gardens;
import org.duskloom.engine.survey.fit.Survey;
import org.junit.jupiter.api.Test;

class SurveyReportTest {
    /** Measured exactly and with a tolerance, so that the figures are those that were hung. */
    private static String exact(Built built) {
        return SurveyReport.of(Survey.compare(built.display(), built.flat(0, 0), OptionalDouble.of(6)));
    }

    /**
     * The distances as described are the roots of the mean squares of chords, such as 2 * 150 * sin(15 degrees) of the
     * ring.
     */
    @Test
    void saysAllOfAGarden() {
        Built built = Gardens.daisies()
                .prop("ring", "ring", 0, 800)
                .prop("lamp", "lamp", 0, 0)
                .built()
                .turn("daisy-1", -25, 700, 2000)
                .move("daisy-1", 30, -12.5)
                .turn("daisy-2", 90, 1400, 2000)
                .start("daisy-3", 7)
                .swap("daisy-4", "daisy-6")
                .turn("ring", -30, 0, 800)
                .measure("daisy-5", 1);
        assertThat(exact(built).lines()).containsExactly("""
                measured: 219 pixels of 8 of 8 props
                measuring error: about 2 mm in each coordinate, a third of the tolerance

                changed places: daisy-4 and daisy-6

                6 props differ:
                daisy-1: turned by 25 degrees clockwise (give or take 0.1 degrees); moved 30 mm to the right and 12.5 mm down (give or take 0.3 mm)
                  41 pixels, 66.8 mm from where they are described; left over: 0 mm
                daisy-2: a quarter turn to the left: 90 degrees counter-clockwise
                  41 pixels, 211 mm from where they are described; left over: 0 mm
                daisy-3: pixel 1 hangs where pixel 8 is described, and the others follow
                  41 pixels, 233.2 mm from where they are described; left over: 0 mm
                daisy-4: hangs where "daisy-6" is described
                  41 pixels, 1400 mm from where they are described; left over: 0 mm
                daisy-6: hangs where "daisy-4" is described
                  41 pixels, 1400 mm from where they are described; left over: 0 mm
                ring: turned by 30 degrees clockwise (give or take 0.2 degrees)
                  12 pixels, 77.6 mm from where they are described; left over: 0 mm
                  or just as well: pixel 1 hangs where pixel 2 is described, and the others follow
                    no pixel tells them apart: both put all pixels at the same places

                2 props as described: daisy-5, lamp
                  daisy-5: measured at one place only, which tells no turn, no mirror image and no wiring: measure pixel 41 and one more as well

                to paste into "props":
                {"name": "daisy-1", "shape": "daisy", "at": [730, 1987.5], "turn": -25},
                {"name": "daisy-2", "shape": "daisy", "at": [1400, 2000], "turn": 120},
                // daisy-3: no entry can say that order of pixels; rewire it, or give it a shape of its own
                {"name": "daisy-4", "shape": "daisy", "at": [4200, 2000], "turn": 30},
                {"name": "daisy-6", "shape": "daisy", "at": [2800, 2000], "turn": 30},
                {"name": "ring", "shape": "ring", "at": [0, 800], "turn": -30},
                """.lines().toArray(String[]::new));
    }

    @Test
    void saysWhatIsMissing() {
        Built built = Gardens.daisies()
                .prop("post", "post", 0, 0)
                .built()
                .measure("post", 1, 2)
                .move("daisy-1", 80, 0)
                .measure("daisy-1", 5)
                .turn("daisy-2", 90, 1400, 2000)
                .measure("daisy-2", 37, 41);
        assertThat(exact(built))
                .contains(
                        "2 props were not measured enough:\ndaisy-1: not where it is described, but not enough to tell how\n"
                                + "  1 pixel, 80 mm from where they are described\n"
                                + "  measured at one place only, which tells no turn")
                .contains("  measured along one line only, which does not tell a mirror image: measure pixel ")
                .contains("  post: with 2 measured pixels a turn of less than 13 degrees does not show");
    }

    /** Readings that errors hide are not said to be the same to the millimetre. */
    @Test
    void saysHowFarRivalsAreApart() {
        Built built = new Gardens().prop("ring", "ring", 0, 0).built().turn("ring", -30, 0, 0);
        assertThat(SurveyReport.of(built.survey(2, 1)))
                .containsPattern(
                        "no pixel tells them apart: they put none farther apart than [0-5]\\.?[0-9]* mm, which");
    }

    @Test
    void saysThatNothingDiffers() {
        String report = exact(Gardens.daisies().built());
        assertThat(report)
                .contains("6 props as described: daisy-1, daisy-2, daisy-3, daisy-4, daisy-5, daisy-6\n")
                .doesNotContain("paste")
                .doesNotContain("differ");
        assertThat(report).doesNotContain("\r").matches("[\\n -~]+");
    }

    @Test
    void saysThatNoReadingFits() {
        Built built = Gardens.daisies().built();
        for (int pixel = 1; pixel <= 20; pixel++) {
            built.shift("daisy-4", pixel, 80, 0);
        }
        assertThat(exact(built))
                .contains(
                        "1 prop differs in a way of its own:\ndaisy-4: bent, or wired in an order of its own; nearest to: ");
    }

    @Test
    void saysWhatMovedTogether() {
        Built built = Gardens.daisies().built();
        for (int i = 1; i <= 3; i++) {
            built.turn("daisy-" + i, -5, 300, 1900);
        }
        assertThat(exact(built))
                .contains("moved together: daisy-1, daisy-2, daisy-3\n"
                        + "  turned by 5 degrees clockwise (give or take 0 degrees) about (300, 1900)\n")
                .contains("daisy-2: moved together with others, as said above");
    }
}
