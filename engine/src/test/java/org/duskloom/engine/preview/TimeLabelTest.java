package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeLabelTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0 s",
        "12.5, 12.5 s",
        "0.025, 0.025 s",
        "3.1, 3.1 s",
        "0.03336666, 0.033 s",
        "59.9994, 59.999 s",
        "59.9996, 1:00",
        "60, 1:00",
        "62.5, 1:02.5",
        "754.025, 12:34.025",
        "3600, 60:00",
        "86399.9, 1439:59.9"
    })
    void writesSecondsThenMinutes(double seconds, String label) {
        assertThat(TimeLabel.of(seconds)).isEqualTo(label);
    }

    @Test
    void doesNotDependOnTheLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(TimeLabel.of(62.5)).isEqualTo("1:02.5");
        } finally {
            Locale.setDefault(before);
        }
    }
}
