package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A plot in the coordinates of its drawing, 600 wide and 100 high, y downwards (SVG 1.1, section 7); places worked
 * out by hand.
 */
class PlotTest {
    /**
     * A line of 12 px times 1.2 on the 42 mm that a plot has on paper, at 96 px to 25.4 mm (CSS 2.1, section 4.3.2).
     */
    private static final double LABEL_PERCENT = 100 * 12 * 1.2 / (42 * 96 / 25.4);

    /** By how much of its own height the style lifts a label. */
    private static final double LIFT = 1.05;

    private static String drawn(Plot plot) {
        Html html = new Html();
        plot.draw(html, "what \"it\" shows", "low", "high", "left", "right");
        return html.toString();
    }

    private static List<MatchResult> all(String regex, String text) {
        Matcher matcher = Pattern.compile(regex).matcher(text);
        return matcher.results().toList();
    }

    /** 11.5 V of 11 to 12 V is half way up, 11.8 V a fifth from the top. */
    @ParameterizedTest(name = "{0} V of 11 to 12 V")
    @CsvSource({"11.5, 50", "11.8, 20", "12, 0", "11, 100", "11.996, 0.40"})
    void limitsStandWhereTheirValueIsOnTheAxis(double value, String y) {
        assertThat(drawn(new Plot(new double[] {12}, 11, 12).limit(value, "needs", false)))
                .contains("<line class=\"soft\" x1=\"0\" x2=\"600\" y1=\"" + y + "\" y2=\"" + y + "\"/>");
    }

    @Test
    void curveAndLimitHaveOneScale() {
        String page = drawn(new Plot(new double[] {3.7, 3.7}, 2, 9).limit(3.7, "same", true));

        String y = all("class=\"hard\" [^>]*y1=\"([0-9.]+)\"", page).get(0).group(1);
        assertThat(Double.parseDouble(y)).isCloseTo(100 * 5.3 / 7, within(0.005));
        assertThat(page).contains("class=\"curve\" d=\"M0 " + y + "H600\"");
    }

    /** What lies beyond an edge is drawn on it, and nothing outside of the drawing. */
    @Test
    void staysWithinItsEdges() {
        String page = drawn(new Plot(new double[] {-5, 2, 50}, 0, 4).limit(7, "far", true));

        assertThat(page).contains("d=\"M0 100H200V50H400V0H600\"").contains("y1=\"0\" y2=\"0\"");
    }

    /** The area below the curve is closed along the lower edge. */
    @Test
    void fillsWhatIsBelowTheCurve() {
        assertThat(drawn(new Plot(new double[] {1, 3}, 0, 4))).contains("class=\"area\" d=\"M0 75H300V25H600V100H0Z\"");
    }

    /** A supply that nothing is drawn from: an axis from 0 to 0 has no scale. */
    @Test
    void anAxisWithoutLengthIsDrawnAllTheSame() {
        assertThat(drawn(new Plot(new double[] {0, 0}, 0, 0).limit(0, "none", true)))
                .contains("d=\"M0 100H600\"")
                .doesNotContain("NaN", "Infinity");
    }

    /** A feed in the middle of the first of four pixels is at an eighth of 600. */
    @Test
    void marksStandOnTheLowerEdge() {
        assertThat(drawn(new Plot(new double[] {1, 1, 1, 1}, 0, 1).mark(0.5 / 4)))
                .contains("<line class=\"tick\" x1=\"75\" x2=\"75\" y1=\"88\" y2=\"100\"/>");
    }

    @Test
    void edgesAreLabelled() {
        assertThat(drawn(new Plot(new double[] {1}, 0, 1)))
                .contains("style=\"top:0\">high</span>", "class=\"y low\">low</span>")
                .containsSubsequence("<div class=\"x\">", "<span>left</span>", "<span>right</span>");
    }

    /** For those who hear the page (WAI-ARIA 1.2, role img). */
    @Test
    void saysWhatItShows() {
        assertThat(drawn(new Plot(new double[] {1}, 0, 1)))
                .contains("role=\"img\" aria-label=\"what &quot;it&quot; shows\"");
    }

    /** Two lines far apart and near, at the upper edge, in the middle and at the lower edge, in either order. */
    @ParameterizedTest(name = "at {0} and {1} of 100")
    @CsvSource({"89, 71", "71, 89", "89, 88", "99, 98", "100, 100", "50, 45", "45, 50", "3, 2", "2, 0", "60, 60"})
    void labelsOfLimitsDoNotOverlap(double one, double other) {
        String page =
                drawn(new Plot(new double[] {1}, 0, 100).limit(one, "one", true).limit(other, "other", false));

        List<double[]> labels = new ArrayList<>();
        for (MatchResult label : all("class=\"limit\" style=\"top:([0-9.]+)%\">", page)) {
            double top = Double.parseDouble(label.group(1)) - LIFT * LABEL_PERCENT;
            labels.add(new double[] {top, top + LABEL_PERCENT});
        }
        labels.sort(Comparator.comparingDouble(label -> label[0]));
        assertThat(labels).hasSize(2);
        assertThat(labels.get(0)[0]).as("within the plot").isNotNegative();
        assertThat(labels.get(0)[1]).as("one below the other").isLessThanOrEqualTo(labels.get(1)[0]);
        assertThat(labels.get(1)[1]).as("within the plot").isLessThanOrEqualTo(100);
        // The upper label is that of the upper line.
        assertThat(page).containsSubsequence(one >= other ? List.of(">one<", ">other<") : List.of(">other<", ">one<"));
    }

    /** The figures that the tests above take of the style stand in it. */
    @Test
    void labelsAreAsHighAsTheStyleMakesThem() {
        assertThat(PageStyle.TEXT)
                .containsPattern("\\.y, \\.limit \\{[^}]*font-size: \\.75rem; line-height: 1\\.2;")
                .containsPattern("\\.limit \\{[^}]*translateY\\(-105%\\)")
                .contains(".plot { height: 42mm; }", ".plot { position: relative; height: 11rem;");
    }

    @Test
    void aLabelStandsOnItsLineWhereThereIsRoom() {
        assertThat(drawn(new Plot(new double[] {1}, 0, 100)
                        .limit(70, "wide", true)
                        .limit(40, "apart", true)))
                .contains("style=\"top:30%\">wide<", "style=\"top:60%\">apart<");
    }
}
