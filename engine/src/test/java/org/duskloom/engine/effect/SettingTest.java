package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.duskloom.engine.color.LinearColor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SettingTest {
    static Stream<Arguments> settings() {
        return Stream.of(
                Arguments.of(NumberSetting.of("a", "share", 0, 1, 0.4, ""), "share", "0 to 1", "0.4"),
                Arguments.of(NumberSetting.whole("a", "arms", 1, 1000, 3, ""), "arms", "whole number 1 to 1000", "3"),
                Arguments.of(
                        NumberSetting.whole("a", "dots", -8, 64, 0, "").steady("drawn once"),
                        "dots",
                        "whole number -8 to 64; does not move",
                        "0"),
                Arguments.of(ColorSetting.of("a", "#ff9e5e", ""), "colour", "any CSS colour", "#ff9e5e"),
                Arguments.of(
                        PaletteSetting.of("a", "", "white"),
                        "palette",
                        "the name of a palette, a CSS colour, or a list of CSS colours",
                        "white"),
                Arguments.of(
                        PaletteSetting.of("a", "", "red", "gold"),
                        "palette",
                        "the name of a palette, a CSS colour, or a list of CSS colours",
                        "[red, gold]"),
                Arguments.of(DurationSetting.of("a", 2, ""), "time", "longer than 0 s", "2s"),
                Arguments.of(DurationSetting.orZero("a", 150, ""), "time", "0 s or longer", "150ms"),
                Arguments.of(DurationSetting.optional("a", ""), "time", "longer than 0 s", ""),
                Arguments.of(ChoiceSetting.of("a", "", "out", "in"), "word", "out, in", "out"),
                Arguments.of(FlagSetting.of("a", ""), "true or false", "true, false", "false"),
                Arguments.of(TextSetting.of("a", "part", "rim", 80, ""), "part", "up to 80 characters", "rim"),
                Arguments.of(FileSetting.of("a", "PNG, JPEG", ""), "file", "PNG, JPEG", ""));
    }

    @ParameterizedTest
    @MethodSource("settings")
    void describesItself(Setting<?> setting, String unit, String range, String standardText) {
        assertThat(setting.unit()).isEqualTo(unit);
        assertThat(setting.range()).isEqualTo(range);
        assertThat(setting.standardText()).isEqualTo(standardText);
        assertThat(setting).hasToString("a");
    }

    @Test
    void hasAStandardValue() {
        assertThat(NumberSetting.of("a", "", 0, 1, 0.4, "").standard().at(9)).isEqualTo(0.4);
        assertThat(ColorSetting.of("a", "white", "").standard().at(9)).isEqualTo(LinearColor.WHITE);
        assertThat(PaletteSetting.of("a", "", "white", "black")
                        .standard()
                        .first()
                        .at(1))
                .isEqualTo(LinearColor.BLACK);
        assertThat(DurationSetting.orZero("a", 150, "").standard()).contains(Period.ofSeconds(0.15));
        assertThat(DurationSetting.optional("a", "").standard()).isEmpty();
        assertThat(FileSetting.of("a", "", "").standard()).isEmpty();
        assertThat(FlagSetting.of("a", "").standard()).isFalse();
    }

    @Test
    void saysWhetherAndWhyItDoesNotMove() {
        assertThat(NumberSetting.of("a", "", 0, 1, 0.4, "").moves()).isTrue();
        assertThat(ColorSetting.of("a", "white", "").moves()).isTrue();
        assertThat(PaletteSetting.of("a", "", "white").moves()).isTrue();
        NumberSetting steady = NumberSetting.of("a", "", 0, 1, 0.4, "").steady("there is one");
        assertThat(steady.moves()).isFalse();
        assertThat(steady.whyNot()).isEqualTo("there is one");
        assertThat(DurationSetting.of("a", 2, "").moves()).isFalse();
        assertThat(DurationSetting.of("a", 2, "").whyNot()).contains("phase");
    }

    @Test
    void refusesAStandardOutOfItsOwnRange() {
        assertThatThrownBy(() -> NumberSetting.of("a", "", 0, 1, 1.1, "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NumberSetting.of("a", "", 0, 1, Double.NaN, ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ColorSetting.of("a", "whte", "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PaletteSetting.of("a", "", "red", "whte"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void settingsGiveWhatIsSetElseTheStandard() {
        DurationSetting every = DurationSetting.of("every", 2, "");
        FlagSetting reverse = FlagSetting.of("reverse", "");
        FileSetting file = FileSetting.of("file", "", "");
        Settings settings = Settings.of(Map.of(every, Optional.of(Period.ofSeconds(1.5))));
        assertThat(settings.value(every)).contains(Period.ofSeconds(1.5));
        assertThat(settings.isGiven(every)).isTrue();
        assertThat(settings.value(reverse)).isFalse();
        assertThat(settings.isGiven(reverse)).isFalse();
        assertThat(settings.value(file)).isEqualTo(Optional.empty());
    }
}
