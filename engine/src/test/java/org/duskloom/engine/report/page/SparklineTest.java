package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Small curves in a drawing 24 high, y downwards (SVG 1.1, section 7); places worked out by hand. */
class SparklineTest {
    private static String drawn(double most, double... values) {
        Html html = new Html();
        Sparkline.draw(html, values, most, "gate <1> \"a\"");
        return html.toString();
    }

    /** A quarter of the most is 6 high, so its top is at 18; the most reaches the upper edge. */
    @Test
    void isAsHighAsTheLightAgainstTheMostOfAll() {
        assertThat(drawn(0.4, 0, 0.1, 0.4))
                .contains("viewBox=\"0 0 3 24\"")
                .contains("d=\"M0 24V24.0H1V18.0H2V0.0H3V24Z\"");
    }

    /** Where nothing is lit the most of all is 0, and a row has no light instead of no number. */
    @Test
    void ofADarkShowIsFlat() {
        assertThat(drawn(0, 0, 0)).contains("d=\"M0 24V24.0H1V24.0H2V24Z\"").doesNotContain("NaN");
    }

    /** A drawing without width is not drawn at all (SVG 1.1, section 7.7). */
    @Test
    void ofNothingHasAWidth() {
        assertThat(drawn(1)).contains("viewBox=\"0 0 1 24\"", "d=\"M0 24V24Z\"");
    }

    @Test
    void saysWhoseItIs() {
        assertThat(drawn(1, 1)).contains("aria-label=\"gate &lt;1&gt; &quot;a&quot;\"");
    }
}
