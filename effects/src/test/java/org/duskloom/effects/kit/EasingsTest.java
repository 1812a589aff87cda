package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EasingsTest {
    private static final TextSetting EASING = Easings.setting("ease-in", "how each light runs");

    /**
     * The definitions of W3C CSS Easing Functions: four steps that jump at their ends, cubic-bezier(0.25, 0.1, 0.25, 1)
     * for {@code ease} (computed from its definition), and a list of places that are joined by straight lines.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "linear; 0.3; 0.3",
                "steps(4); 0.3; 0.25",
                "steps(4, jump-start); 0.3; 0.5",
                "ease; 0.5; 0.802403",
                "cubic-bezier(0.42, 0, 0.58, 1); 0.5; 0.5",
                "linear(0, 1.5, 1); 0.25; 0.75"
            })
    void takesTheEasingsOfCss(String text, double progress, double eased) throws SettingException {
        Settings settings = Settings.of(Map.of(EASING, text));
        assertThat(Easings.of(settings, EASING).at(progress)).isCloseTo(eased, within(1e-6));
    }

    /** {@code ease-in} is cubic-bezier(0.42, 0, 1, 1): 0.315357 half-way, computed from its definition. */
    @Test
    void isTheStandardUnlessSomethingIsSaid() throws SettingException {
        assertThat(Easings.of(Settings.of(Map.of()), EASING).at(0.5)).isCloseTo(0.315357, within(1e-6));
        assertThat(EASING.name()).isEqualTo("easing");
        assertThat(EASING.standardText()).contains("ease-in");
        assertThat(EASING.meaning()).isEqualTo("how each light runs");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "eased", "steps(0)", "cubic-bezier(2, 0, 1, 1)", "steps(4", "linear(1, NaN)"})
    void refusesWhatIsNoEasing(String text) {
        Settings settings = Settings.of(Map.of(EASING, text));
        assertThatThrownBy(() -> Easings.of(settings, EASING))
                .isInstanceOfSatisfying(
                        SettingException.class,
                        refusal -> assertThat(refusal.setting()).isEqualTo("easing"));
    }
}
