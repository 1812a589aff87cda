package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may stand in a timeline for a setting, and what is said of a setting that cannot be used. */
class SettingKindsTest {
    private static final NumberSetting SHARE = NumberSetting.of("a", "share", 0, 1, 0.4, "");
    private static final NumberSetting ARMS = NumberSetting.whole("a", "arms", 1, 9, 3, "");

    private static final Map<String, Setting<?>> SETTINGS = Map.of(
            "share", SHARE,
            "share, steady", SHARE.steady("there is one"),
            "arms, steady", ARMS.steady("there is one"),
            "word", ChoiceSetting.of("a", "", "edge", "centre"),
            "flag", FlagSetting.of("a", ""),
            "colour", ColorSetting.of("a", "white", ""),
            "text", TextSetting.of("a", "part", "", 80, ""),
            "file", FileSetting.of("a", "PNG", ""),
            "hits", HitsSetting.of("a", ""));

    private static List<String> problems(String setting, String json) {
        Problems problems = new Problems();
        SETTINGS.get(setting).kind().read(Inputs.json(json), "\"a\"", problems);
        return Inputs.shown(problems);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            share, steady | 0
            share, steady | 1
            share, steady | 0.25
            arms, steady  | 9
            word          | "centre"
            flag          | true
            text          | "rim/top"
            file          | "bee.png"
            hits          | "beat"
            colour        | "#ff9e5e"
            """)
    void takesWhatItIsFor(String setting, String json) {
        assertThat(problems(setting, json)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            share, steady | -0.01     | -0.01
            share, steady | 1.01      | from 0 to 1
            share, steady | "0.5"     | number
            arms, steady  | 0         | from 1 to 9
            arms, steady  | 2.5       | whole number
            word          | "center"  | "centre"
            word          | 1         | edge
            flag          | "true"    | true
            flag          | 1         | true
            text          | 7         | text
            file          | ["a.png"] | text
            """)
    void refusesTheRestAndSaysWhatIsAllowed(String setting, String json, String part) {
        assertThat(problems(setting, json)).singleElement().asString().contains(part);
    }

    /** A number that may move takes keys as well, one that does not move refuses them. */
    @Test
    void onlyWhatMovesTakesKeys() {
        String keys = "[{\"at\": \"0s\", \"value\": 0}, {\"at\": \"1s\", \"value\": 1}]";
        assertThat(problems("share", "0.5")).isEmpty();
        assertThat(problems("share, steady", keys)).isNotEmpty();
        assertThat(SHARE.kind().objects()).isNotEmpty();
        assertThat(SHARE.steady("no").kind().objects()).isEmpty();
    }

    @Test
    void steadyChangesNothingElse() {
        NumberSetting steady = ARMS.steady("there is one");
        assertThat(steady.isWhole()).isTrue();
        assertThat(List.of(steady.min(), steady.max(), steady.standard().first()))
                .containsExactly(1.0, 9.0, 3.0);
        assertThat(steady.unit()).isEqualTo("arms");
        assertThat(steady.name()).isEqualTo("a");
    }

    @Test
    void remembersWhetherZeroIsATimeAndHowLongATextMayBe() {
        assertThat(DurationSetting.of("a", 2, "").zeroAllowed()).isFalse();
        assertThat(DurationSetting.optional("a", "").zeroAllowed()).isFalse();
        assertThat(DurationSetting.orZero("a", 0, "").zeroAllowed()).isTrue();
        assertThat(DurationSetting.orZero("a", 0, "").standard()).contains(Period.ofSeconds(0));
        assertThat(TextSetting.of("a", "part", "", 80, "").longest()).isEqualTo(80);
        assertThat(TextSetting.of("a", "dots", "dots and dashes", ".", 9, "").range())
                .isEqualTo("dots and dashes");
    }

    /** The word of a setting points at it in the timeline; a faulty file has places of its own besides. */
    @Test
    void saysWhichSettingIsAtFault() {
        SettingException plain = new SettingException("count", "9 of 3", "at most 3");
        assertThat(plain).hasMessage("9 of 3");
        assertThat(plain.setting()).isEqualTo("count");
        assertThat(plain.hint()).isEqualTo("at most 3");
        assertThat(plain.inFile()).isEmpty();
        Problem broken = new Problem(Severity.ERROR, new Location("bee.png", 1, 1), "not a PNG", "save it as one");
        SettingException file = new SettingException("file", List.of(broken, broken));
        assertThat(file.inFile()).containsExactly(broken, broken);
        assertThat(file).hasMessage(broken.toString());
        assertThat(file.hint()).isEmpty();
    }

    @Test
    void aFileThatIsGivenIsKnownByItsBytes() {
        FileSetting file = FileSetting.of("file", "PNG", "");
        Settings bee = Settings.of(Map.of(file, Optional.of(Path.of("bee.png"))));
        assertThat(bee.fingerprint(List.of(file), path -> "1"))
                .isNotEqualTo(bee.fingerprint(List.of(file), path -> "2"));
    }
}
