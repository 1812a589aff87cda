package org.duskloom.engine.survey.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.duskloom.engine.display.Units;
import org.duskloom.engine.survey.Overall;
import org.duskloom.engine.survey.Overall.Cause;
import org.duskloom.engine.survey.Overall.Flip;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OverallWordingTest {
    private static List<String> lines(Cause cause, double factor, String unit, Flip flip, boolean isDepthFlipped) {
        Overall overall = new Overall(cause, factor, Optional.ofNullable(unit), flip, isDepthFlipped);
        return OverallWording.lines(overall, Units.MILLIMETRES);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            0.1  | cm | NONE       | false | a tenth as large as described: was it measured in cm? | write the measurements in mm instead of cm
            1    | -  | LEFT_RIGHT | false | mirrored, left and right change places: was it measured from behind? | change the sign of every x
            1    | -  | LEFT_RIGHT | true  | mirrored, left and right change places: was it measured from behind? | change the sign of every x and of every z
            1    | -  | TOP_BOTTOM | false | mirrored, top and bottom change places: does y count down? | change the sign of every y, or add --photo if it is one
            0.01 | m  | LEFT_RIGHT | false | a hundredth as large as described, and mirrored, left and right change places: was it measured in m, from behind? | write the measurements in mm instead of m and change the sign of every x
            """)
    void asksAndSaysWhatToDo(
            double factor, String unit, Flip flip, boolean isDepthFlipped, String question, String remedy) {
        assertThat(lines(Cause.READING, factor, unit, flip, isDepthFlipped))
                .containsExactly(
                        "",
                        "everything is " + question,
                        "  if so, " + remedy + ", and survey again",
                        "  what follows is told as if that were done; entries to paste come then");
    }

    /** Three digits that count: an inch is 25.4 mm, so what was measured in inches is 1 / 25.4 = 0.03937 as large. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.001                | a thousandth as
            0.039370078740157    | 0.0394 times as
            25.4                 | 25.4 times as
            0.5                  | 0.5 times as
            1.23456              | 1.23 times as
            0.00012345           | 0.000123 times as
            1000                 | 1000 times as
            """)
    void saysSizesWithThreeDigits(double factor, String text) {
        assertThat(lines(Cause.READING, factor, "inches", Flip.NONE, false).get(1))
                .isEqualTo("everything is " + text + " large as described: was it measured in inches?");
    }

    @Test
    void writesInchesOut() {
        Overall overall = new Overall(Cause.READING, 0.01, Optional.of("m"), Flip.NONE, false);
        assertThat(OverallWording.lines(overall, Units.INCHES).get(2))
                .isEqualTo("  if so, write the measurements in inches instead of m, and survey again");
    }

    @Test
    void sendsPlacesInAPictureToTheirOption() {
        assertThat(lines(Cause.PHOTO, 0.3334, null, Flip.TOP_BOTTOM, false))
                .contains(
                        "everything is 0.333 times as large as described, and mirrored, top and bottom change places:"
                                + " are these places in a photo?",
                        "  then add --photo, with x and y only, and survey again");
    }
}
