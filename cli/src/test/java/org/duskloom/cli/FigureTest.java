package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class FigureTest {
    /** A rate that is said must be possible, so 43.29, of 23.1 ms a frame, is no 43.3. */
    @Test
    void roundsRatesDown() {
        assertThat(Figure.rate(1000 / 23.1)).isEqualTo("43.2");
        assertThat(Figure.rate(44)).isEqualTo("44.0");
    }

    /** A line that has to carry too much comes below nothing in the model, where no voltage is. */
    @Test
    void tellsOfNoVoltageBelowNothing() {
        assertThat(Figure.volts(-0.001)).isEqualTo("none");
        assertThat(Figure.volts(0)).isEqualTo("0.00 V");
        assertThat(Figure.volts(11.5)).isEqualTo("11.50 V");
    }

    /** A prop that is lit for a moment is not dark all the time. */
    @Test
    void hardlyAnythingIsNotNothing() {
        assertThat(Figure.percent(0)).isEqualTo("0 %");
        assertThat(Figure.percent(1e-6)).isEqualTo("under 1 %");
        assertThat(Figure.percent(0.0049)).isEqualTo("under 1 %");
        assertThat(Figure.percent(0.005)).isEqualTo("1 %");
    }

    /** The same figures on a machine whose decimal sign is a comma and whose digits are others. */
    @Test
    void isTheSameInEveryCountry() {
        Locale usual = Locale.getDefault();
        try {
            for (String tag : new String[] {"de-DE", "ar-EG-u-nu-arab", "th-TH-u-nu-thai"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(Figure.amps(1.25)).isEqualTo("1.25 A");
                assertThat(Figure.watts(14.6)).isEqualTo("15 W");
                assertThat(Figure.percent(0.333)).isEqualTo("33 %");
            }
        } finally {
            Locale.setDefault(usual);
        }
    }
}
