package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.Easing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said, word for word, to who writes a setting wrongly, and to who declares one wrongly. */
class SettingWordsTest {
    private static final Map<String, Setting<?>> SETTINGS = Map.of(
            "share", NumberSetting.of("width", "share", 0, 1, 0.4, "how wide").steady("it is drawn once"),
            "dots", NumberSetting.whole("width", "dots", -8, 64, 0, "how wide").steady("it is drawn once"),
            "word", ChoiceSetting.of("width", "how wide", "narrow", "wide"),
            "flag", FlagSetting.of("width", "whether it is wide"),
            "part", TextSetting.of("width", "part", "", 80, "what is wide"));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            share | 1.5     | "width" is 1.5; allowed: a number from 0 to 1
            dots  | 2.5     | "width" is 2.5; allowed: a whole number from -8 to 64
            dots  | 65      | "width" is 65; allowed: a whole number from -8 to 64
            word  | "wode"  | "width" is "wode"; did you mean "wide"? allowed: narrow, wide
            word  | "Wide"  | "width" is "Wide"; did you mean "wide"? allowed: narrow, wide
            flag  | "no"    | "width" must be true or false, not the text "no"
            part  | 3       | "width" must be a text, not the number 3; write "3" in quotes
            """)
    void aWrongValueIsTold(String setting, String json, String said) {
        Problems problems = new Problems();
        SETTINGS.get(setting).kind().read(Inputs.json(json), "\"width\"", problems);
        assertThat(Inputs.shown(problems)).containsExactly("in.json:1:1: error: " + said);
    }

    @ParameterizedTest
    @CsvSource({"-0.1, -0.1", "1.1, 1.1", "NaN, NaN"})
    void aDefaultOutsideTheRangeIsTold(double standard, String shown) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NumberSetting.of("width", "share", 0, 1, standard, ""))
                .withMessage("width: " + shown + " is not from 0.0 to 1.0");
    }

    /** The ends of the range are in it. */
    @Test
    void aDefaultMayBeTheLeastOrTheMost() {
        assertThat(NumberSetting.of("width", "share", 0, 1, 0, "").standardText())
                .isEqualTo("0");
        assertThat(NumberSetting.of("width", "share", 0, 1, 1, "").standardText())
                .isEqualTo("1");
    }

    /** As a person types it: no exponent, no zeros behind. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.5", "1000000, 1000000", "0.0000001, 0.0000001", "-90, -90", "100, 100"})
    void aDefaultStandsAsItWouldBeWritten(double standard, String text) {
        assertThat(NumberSetting.of("width", "", -1e9, 1e9, standard, "").standardText())
                .isEqualTo(text);
    }

    private static void assertNeeds(String what, ThrowingCallable made) {
        assertThatNullPointerException().isThrownBy(made).withMessage(what);
    }

    @Test
    void nothingIsMadeOfNothing() {
        assertNeeds("name", () -> FlagSetting.of(null, ""));
        assertNeeds("meaning", () -> FlagSetting.of("width", null));
        assertNeeds("setting", () -> new Doubt(null, "it will be dark", ""));
        assertNeeds("message", () -> new Doubt("width", null, ""));
        assertNeeds("hint", () -> new Doubt("width", "it will be dark", null));
        assertNeeds("setting", () -> new SettingException(null, "it will be dark", ""));
        assertNeeds("hint", () -> new SettingException("width", "it will be dark", (String) null));
        assertNeeds("easing", () -> new NumberKey(0, 1, null));
        assertNeeds("color", () -> new ColorKey(0, null, Easing.LINEAR));
        assertNeeds("easing", () -> new ColorKey(0, LinearColor.BLACK, null));
        assertNeeds("palette", () -> new PaletteKey(0, null, Easing.LINEAR));
        assertNeeds("unit", () -> new Period(1, null));
    }

    /** Two settings may have one name and one meaning, of two effects: a value is that of the one it was read for. */
    @Test
    void aValueIsOfOneSettingAndNotOfItsName() {
        DurationSetting every = DurationSetting.of("every", 2, "how long a pass takes");
        DurationSetting others = DurationSetting.of("every", 3, "how long a pass takes");
        Settings settings = Settings.of(Map.of(every, Optional.of(Period.ofSeconds(5))));
        assertThat(settings.value(every)).contains(Period.ofSeconds(5));
        assertThat(settings.value(others)).contains(Period.ofSeconds(3));
        assertThat(settings.isGiven(others)).isFalse();
        assertThat(List.of(every, others)).extracting(Setting::toString).containsExactly("every", "every");
    }
}
