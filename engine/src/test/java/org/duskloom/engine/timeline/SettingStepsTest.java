package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What changes from play to play, worked out on paper. */
class SettingStepsTest {
    private final Problems problems = new Problems();

    private static List<Field> fields(String json) {
        return ((ObjectNode) Inputs.json(json)).fields();
    }

    private SettingSteps.Changed play(int play, String with, String change) {
        return new SettingSteps(fields(change)).appliedTo(fields(with), play, problems);
    }

    private NumberNode sum(int play, String start, String added) {
        List<Field> with =
                play(play, "{\"a\": " + start + "}", "{\"a\": " + added + "}").with();
        return (NumberNode) with.get(0).value();
    }

    private static String shown(List<Field> fields) {
        return fields.stream().map(SettingStepsTest::shown).collect(Collectors.joining(", "));
    }

    private static String shown(Field field) {
        return field.name() + " "
                + (field.value() instanceof NumberNode number ? number.written() : ((TextNode) field.value()).value());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            0 | size 2, hue 10, glow red   | speed 0
            1 | size 5, hue 20, glow blue  | speed -4
            2 | size 8, hue 10, glow white | speed -8
            3 | size 11, hue 20, glow red  | speed -12
            """)
    void numbersAreAddedOnceMoreAndListsGoRound(int play, String with, String beside) {
        SettingSteps.Changed changed = play(
                play,
                "{\"size\": 2, \"hue\": 7}",
                "{\"speed\": -4, \"size\": 3, \"hue\": [10, 20], \"glow\": [\"red\", \"blue\", \"white\"]}");
        assertThat(shown(changed.with())).isEqualTo(with);
        assertThat(shown(changed.beside())).isEqualTo(beside);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /**
     * What stands in a message is the sum as it is worked out on paper; frames are computed from that of doubles (IEEE
     * 754), which make -1.1e-16 of 0.98 - 7 * 0.14.
     */
    @ParameterizedTest
    @CsvSource({"0.98, -0.14, 7, 0", "0.09, 0.07, 13, 1", "0.1, 0.1, 2, 0.3", "0, 0.1, 3, 0.3", "1e-3, 1e-3, 6, 0.007"})
    void sumsAreWrittenAsOnPaper(String start, String added, int play, String sum) {
        NumberNode value = sum(play, start, added);
        assertThat(value.value()).isEqualTo(Double.parseDouble(start) + play * Double.parseDouble(added));
        assertThat(value.written()).isEqualTo(sum);
    }

    /** A setting from 0 to 1 whose plays end at a bound on paper is in order, though doubles may step over it. */
    @Test
    void reachesEveryBoundInHundredths() {
        for (int added = 1; added <= 33; added++) {
            for (int play = 1; play * added <= 100; play++) {
                BigDecimal step = BigDecimal.valueOf(added, 2);
                BigDecimal all = step.multiply(BigDecimal.valueOf(play));
                NumberNode up = sum(play, BigDecimal.ONE.subtract(all).toString(), step.toString());
                NumberNode down = sum(play, all.toString(), step.negate().toString());
                assertThat(up.written()).isEqualTo("1");
                assertThat(down.written()).isEqualTo("0");
                ValueKind.Number share = new ValueKind.Number("share", 0, 1);
                assertThat(share.read(up, "\"a\"", problems))
                        .hasValueSatisfying(end -> assertThat(end).isBetween(1 - 1e-14, 1.0));
                assertThat(share.read(down, "\"a\"", problems))
                        .hasValueSatisfying(end -> assertThat(end).isBetween(0.0, 1e-14));
            }
        }
        assertThat(Inputs.shown(problems)).isEmpty();
        new ValueKind.Number("share", 0, 1).read(sum(8, "0.98", "-0.14"), "\"a\"", problems);
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("\"a\" is -0.14; ");
    }

    /** Numbers of such a size have no use, but may stand in a file: they end in infinity, not in an exception. */
    @ParameterizedTest
    @CsvSource({"1e308, 1e308, 9999", "1e308, 1e-320, 9999", "-1e308, -1e308, 2", "5e-324, 5e-324, 9999"})
    void hugeAndTinyNumbersAreBorne(String start, String added, int play) {
        double sum = Double.parseDouble(start) + play * Double.parseDouble(added);
        assertThat(sum(play, start, added).value()).isEqualTo(sum);
    }

    /** What neither adds up nor goes round is told where the change stands, and the setting is as it was written. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"a": "red"}                   | the text "red"
            {"a": [1, 2]}                  | a list
            {"a": {"keys": [["0s", 1]]}}   | an object
            {"a": true}                    | true
            """)
    void onlyPlainNumbersCanBeAddedTo(String with, String shown) {
        SettingSteps.Changed changed = play(3, with, "{\"a\": 2.5}");
        assertThat(changed.with()).isEqualTo(fields(with));
        assertThat(changed.beside()).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("in.json:1:2: error: the change of \"a\" per repeat adds 2.5 to " + shown
                        + "; give a number to add to a plain number, or a list of values to go through");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            []    | an empty list
            "red" | the text "red"
            {}    | an object
            null  | null
            true  | true
            """)
    void aChangeIsANumberOrAListWithSomethingInIt(String change, String shown) {
        play(0, "{\"a\": 1}", "{\"a\": " + change + "}");
        assertThat(Inputs.shown(problems))
                .containsExactly("in.json:1:2: error: the change of \"a\" per repeat is " + shown
                        + "; give a number to add to a plain number, or a list of values to go through");
    }

    /** A play of a list stands where its value does, so that what is wrong with the third value is told there. */
    @Test
    void valuesKeepTheirPlaces() {
        SettingSteps.Changed changed = play(2, "{}", "{\"a\": [1, 2, \"x\"]}");
        assertThat(changed.with().get(0).value().location()).hasToString("in.json:1:14");
        assertThat(changed.with().get(0).nameLocation()).hasToString("in.json:1:2");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {}                                     | 1
            {"a": 1}                               | 1
            {"a": []}                              | 1
            {"a": [1, 2], "b": 3, "c": [1, 2, 3]}  | 3
            """)
    void tellsHowManyPlaysShowAll(String change, int plays) {
        assertThat(new SettingSteps(fields(change)).playsToSeeAll()).isEqualTo(plays);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3", "{}", "{\"change\": 3}", "{\"change\": []}"})
    void whatSaysNothingOfChangesHasNone(String repeat) {
        assertThat(SettingSteps.in(Inputs.json(repeat))).isEqualTo(SettingSteps.NONE);
    }
}
