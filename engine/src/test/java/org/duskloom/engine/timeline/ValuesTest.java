package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.TimeContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Short texts of a timeline, and what changes in the settings from play to play. */
class ValuesTest {
    private static final TimeContext AT_40 = TimeContext.NONE.withRate(FrameRate.of(40));

    private final Problems problems = new Problems();

    private Optional<ExactTime> time(String json) {
        return Values.time(Inputs.json(json), "\"at\"", AT_40, problems);
    }

    private String told() {
        assertThat(Inputs.shown(problems)).hasSize(1);
        return Inputs.shown(problems).get(0);
    }

    /** As many seconds as a fraction: 10 frames at 40 a second are a quarter. */
    @ParameterizedTest
    @CsvSource({"3s, 3, 1", "250ms, 1, 4", "10f, 1, 4", "1:02.5, 125, 2", "0s, 0, 1", "0.1s, 1, 10"})
    void readsTimesExactly(String text, long numerator, long denominator) {
        ExactTime time = time("\"" + text + "\"").orElseThrow();
        assertThat(time.numerator() * denominator).isEqualTo(numerator * time.denominator());
        assertThat(problems.errorCount()).isZero();
    }

    /** A bare number has no unit; what it probably meant is offered, and where that is open both. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3    | such as "3s"
            2.5  | such as "2.5s"
            500  | such as "500ms"
            30   | such as "30s" or "30ms"
            30.5 | such as "30.5s"
            """)
    void asksForAUnit(String number, String hint) {
        assertThat(time(number)).isEmpty();
        assertThat(told())
                .startsWith("in.json:1:1: error: \"at\" must be a time, not the number " + number)
                .endsWith(hint);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            true     | "at" is true or false
            ["3s"]   | "at" is a list
            "+3s"    | only "at" of a cue counts from the cue before
            " +3s"   | only "at" of a cue counts from the cue before
            "3"      | "3"
            "3 bees" | "3 bees"
            ""       | ""
            """)
    void refusesWhatIsNoTime(String json, String message) {
        assertThat(time(json)).isEmpty();
        assertThat(told()).contains(message);
    }

    /** IEC 61966-2-1: the code 128 is 0.2158605 of the light. */
    @Test
    void readsColours() {
        LinearColor grey =
                Values.color(Inputs.json("\"#808080\""), "\"color\"", problems).orElseThrow();
        assertThat((double) grey.green()).isCloseTo(0.215860500114, within(1e-6));
        assertThat(Values.color(Inputs.json("\"gray\""), "\"color\"", problems)).contains(grey);
        assertThat(Values.color(Inputs.json("7"), "\"color\"", problems)).isEmpty();
        assertThat(told()).contains("\"color\" is a number").contains("it must be a colour, such as \"#ff9e5e\"");
    }

    /** CSS Easing Functions Level 1: ease-in-out is symmetric, so it is half-way in the middle. */
    @Test
    void readsEasings() {
        assertThat(Values.easing(Inputs.json("\"ease-in-out\""), "\"easing\"", problems)
                        .orElseThrow()
                        .at(0.5))
                .isCloseTo(0.5, within(1e-9));
        assertThat(Values.easing(Inputs.json("\"ease-inn\""), "\"easing\"", problems))
                .isEmpty();
        assertThat(told()).contains("ease-inn");
    }

    private static List<Field> fields(String json) {
        return ((ObjectNode) Inputs.json(json)).fields();
    }

    private String settings(String with, String change, int play) {
        SettingSteps.Changed changed = new SettingSteps(fields(change)).appliedTo(fields(with), play, problems);
        return shown(changed.with()) + " / " + shown(changed.beside());
    }

    private static String shown(List<Field> fields) {
        return String.join(
                " ",
                fields.stream()
                        .map(field -> field.name() + "=" + shown(field.value()))
                        .toList());
    }

    private static String shown(Node node) {
        return node instanceof NumberNode number ? Double.toString(number.value()) : node.toString();
    }

    /** 0.1 is added once more each time: to what is written, or beside it for what only the effect knows. */
    @ParameterizedTest
    @CsvSource({"0, a=1.0 b=5.0 / ''", "1, a=1.25 b=5.0 / ''", "4, a=2.0 b=5.0 / ''"})
    void addsToNumbers(int play, String expected) {
        assertThat(settings("{\"a\": 1, \"b\": 5}", "{\"a\": 0.25}", play)).isEqualTo(expected.replace("''", ""));
        assertThat(settings("{\"b\": 5}", "{\"a\": 0.25}", play)).isEqualTo("b=5.0 / a=" + 0.25 * play);
        assertThat(problems.errorCount()).isZero();
    }

    /** After the last item of a list the first comes again; a list needs no setting to begin with. */
    @Test
    void goesThroughListsRoundAndRound() {
        List<String> seen = IntStream.range(0, 7)
                .mapToObj(play -> settings("{\"b\": 5}", "{\"a\": [1, 2, 3]}", play))
                .toList();
        assertThat(seen)
                .containsExactly(
                        "b=5.0 a=1.0 / ",
                        "b=5.0 a=2.0 / ",
                        "b=5.0 a=3.0 / ",
                        "b=5.0 a=1.0 / ",
                        "b=5.0 a=2.0 / ",
                        "b=5.0 a=3.0 / ",
                        "b=5.0 a=1.0 / ");
        assertThat(new SettingSteps(fields("{\"a\": [1, 2, 3], \"b\": [1, 2], \"c\": 7}")).playsToSeeAll())
                .isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"a": "red"} | {"a": 1}     | adds 1 to the text "red"
            {"a": 1}     | {"a": "red"} | is the text "red"
            {"a": 1}     | {"a": []}    | is an empty list
            {"a": [1]}   | {"a": 1}     | adds 1 to a list
            """)
    void refusesChangesThatCannotBeMade(String with, String change, String told) {
        settings(with, change, 1);
        assertThat(told())
                .contains("the change of \"a\" per repeat " + told + ";")
                .startsWith("in.json:1:2");
    }
}
