package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Map;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The expected times are the meaning of the digits, written as exact fractions of a second. */
final class TimeTextTest {
    private static final TimeContext ALL = TimeContext.NONE
            .withRate(new FrameRate(30000, 1001))
            .withBeats(Beats.steady(new Tempo(new ExactTime(15, 32)), ExactTime.ZERO, 4))
            .withMarks(Map.of(
                    "dusk", ExactTime.ofSeconds(10),
                    "dusk-2", ExactTime.ofSeconds(20),
                    "first frog", ExactTime.ofMilliseconds(500)));

    @ParameterizedTest
    @CsvSource({
        "3s, 3, 1",
        "0s, 0, 1",
        "0.5s, 1, 2",
        ".5s, 1, 2",
        "007s, 7, 1",
        "250ms, 1, 4",
        "0.1ms, 1, 10000",
        "' 3s ', 3, 1",
        "0.1s, 1, 10",
        "0.000000001s, 1, 1000000000",
        "999999999s, 999999999, 1",
        "+2s, 2, 1"
    })
    void readsSecondsAndMilliseconds(String text, long numerator, long denominator) throws TextFormatException {
        assertThat(TimeText.parse(text, TimeContext.NONE)).isEqualTo(new ExactTime(numerator, denominator));
    }

    @ParameterizedTest
    @CsvSource({
        "1:02.5, 125, 2",
        "1:00:00, 3600, 1",
        "0:00, 0, 1",
        "0:05, 5, 1",
        "90:00, 5400, 1",
        "10:59:59.999, 39599999, 1000",
        "00:01:00, 60, 1",
        "'1:00\n', 60, 1",
        "0:00.000000001, 1, 1000000000"
    })
    void readsClockTimes(String text, long numerator, long denominator) throws TextFormatException {
        assertThat(TimeText.parse(text, TimeContext.NONE)).isEqualTo(new ExactTime(numerator, denominator));
    }

    /** At 30000/1001 frames per second 90 frames last 90 * 1001 / 30000 = 3003/1000 s; a beat here lasts 15/32 s. */
    @ParameterizedTest
    @CsvSource({"90f, 3003, 1000", "0f, 0, 1", "30.0f, 1001, 1000", "8b, 15, 4", "0.5b, 15, 64", "1b, 15, 32"})
    void readsFramesAndBeats(String text, long numerator, long denominator) throws TextFormatException {
        assertThat(TimeText.parse(text, ALL)).isEqualTo(new ExactTime(numerator, denominator));
    }

    @ParameterizedTest
    @CsvSource({
        "@dusk, 10, 1",
        "@dusk+2b, 175, 16",
        "@dusk-250ms, 39, 4",
        "@dusk-2, 20, 1",
        "@dusk-2s, 8, 1",
        "@dusk-2-2s, 18, 1",
        "@dusk+1:00, 70, 1",
        "@first frog, 1, 2",
        "@first frog+30f, 1501, 1000",
        "@dusk+1b-1b+3s, 13, 1",
        "@first frog-500ms, 0, 1"
    })
    void startsFromMarks(String text, long numerator, long denominator) throws TextFormatException {
        assertThat(TimeText.parse(text, ALL)).isEqualTo(new ExactTime(numerator, denominator));
    }

    @ParameterizedTest
    @CsvSource({"-250ms, -1, 4", "-1:00, -60, 1", "-0s, 0, 1", "@first frog-1s, -1, 2", "-8b, -15, 4"})
    void negativeTimesOnlyWhereAllowed(String text, long numerator, long denominator) throws TextFormatException {
        ExactTime time = new ExactTime(numerator, denominator);

        assertThat(TimeText.parseSigned(text, ALL)).isEqualTo(time);
        if (time.isNegative()) {
            assertThat(refusal(text, ALL))
                    .hasMessage("the time \"" + text + "\" is negative (" + time + ")")
                    .extracting(TextFormatException::hint)
                    .isEqualTo("it must be 0s or later");
        } else {
            assertThat(TimeText.parse(text, ALL)).isEqualTo(time);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3|has no unit|write \"3s\" for seconds or \"3ms\"",
                "@dusk+3|has no unit|write \"3s\" for seconds or \"3ms\"",
                "1,5s|unknown unit|decimals follow a dot",
                "3 s|unknown unit|write seconds as \"3s\"",
                "3 f|unknown unit|leave no space between the number and its unit: \"3f\"",
                "1 takt|unknown unit|units: s, ms, f (frames), b (beats), bars",
                "24 Sekunden|unknown unit|units: s, ms, f (frames), b (beats), bars",
                "1.5seconds|unknown unit|write seconds as \"1.5s\"",
                "1m30s|unknown unit|write minutes and seconds as \"90s\"",
                "2 min 5.5 sec|unknown unit|write minutes and seconds as \"125.5s\"",
                "2 min|unknown unit|write minutes and hours as",
                "3S|unknown unit|units are in small letters: \"s\"",
                "3min|unknown unit|write minutes and hours as",
                "3sec|unknown unit|write seconds as \"3s\"",
                "1e3s|unknown unit|units: s, ms",
                "1:60|is no clock time|write minutes:seconds",
                "1:2|is no clock time|two digits after each colon",
                "1:60:00|is no clock time|below 60",
                "1:02.5s|is no clock time|write minutes:seconds",
                "1:02,5|is no clock time|write minutes:seconds",
                "1:02.|is no clock time|write minutes:seconds",
                ":30|is no clock time|write minutes:seconds",
                "1:00:00:00|is no clock time|write minutes:seconds",
                "1.5f|not a whole number of frames|write a whole number",
                "abc|has no readable number|write a number and a unit",
                "s|has no readable number|write a number and a unit",
                "3.s|has no readable number|write a number and a unit",
                ".s|has no readable number|write a number and a unit",
                "--3s|has no readable number|write a number and a unit",
                "@dusk+|has no readable number|write a number and a unit",
                "@dusk+-3s|has no readable number|write a number and a unit",
                "@dusk+@dusk|has no readable number|write a number and a unit",
                "1000000000s|has too many digits|at most nine",
                "0.0000000001s|has too many digits|at most nine",
                "@dsuk|names no cue and no marker|did you mean \"dusk\"?",
                "@dsuk+2b|names no cue and no marker|did you mean \"dusk\"?",
                "@|names no cue and no marker|allowed: dusk, dusk-2, first frog",
                "@dusk3|names no cue and no marker|did you mean \"dusk\"?",
                "@Dusk|names no cue and no marker|did you mean \"dusk\"?"
            })
    void refusalsTeach(String text, String message, String hint) {
        TextFormatException refusal = refusal(text, ALL);

        assertThat(refusal).hasMessageStartingWith("the time \"" + text + "\"").hasMessageContaining(message);
        assertThat(refusal.hint()).contains(hint);
    }

    @Test
    void framesBeatsAndMarksNeedTheirContext() {
        assertThat(refusal("90f", TimeContext.NONE)).hasMessageContaining("no frame rate is known");
        assertThat(refusal("8b", TimeContext.NONE))
                .hasMessageContaining("counts beats, but it is not known where they lie");
        assertThat(refusal("@dusk", TimeContext.NONE)).hasMessageContaining("cannot be used here");
        assertThat(refusal("@dusk", ALL.withoutMarks())).hasMessageContaining("cannot be used here");
        assertThat(refusal("@dusk", TimeContext.NONE.withMarks(Map.of())).hint())
                .isEqualTo("no cue has a name, and there are no markers");
    }

    /** A hint must not name what would be refused as well. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3x|units: s, ms, f (frames)",
                "3B|units: s, ms, f (frames)",
                "8b|say it in the timeline: \"beats\": {\"tempo\": 120}, or the name of a label track",
                "@dusk|write a number and a unit, such as \"3s\", \"250ms\", \"1:02.5\" or \"90f\""
            })
    void hintsNameOnlyWhatCanBeUsed(String text, String hint) {
        TimeContext framesOnly = TimeContext.NONE.withRate(FrameRate.of(40));

        assertThat(refusal(text, framesOnly).hint()).isEqualTo(hint);
        assertThat(refusal(text, TimeContext.NONE).hint())
                .doesNotContain("f (frames)")
                .doesNotContain("90f");
    }

    @Test
    void takesWhatItIsGivenOverflowing() {
        TimeContext slow = TimeContext.NONE
                .withBeats(Beats.steady(new Tempo(new ExactTime(Long.MAX_VALUE, 7)), ExactTime.ZERO, 4))
                .withMarks(Map.of("late", new ExactTime(Long.MAX_VALUE, 7)));

        assertThat(refusal("9b", slow)).hasMessageContaining("cannot be counted exactly");
        assertThat(refusal("@late+0.3s", slow)).hasMessageContaining("cannot be counted exactly");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "\u0000",
                "\n3s\n4s",
                "٣s",
                "3\u00a0s",
                "３s",
                "∞s",
                "NaNs",
                "Infinity",
                "0x3s",
                "3s4s",
                "1::00",
                ":",
                "1:00:",
                "@@dusk",
                "@dusk dusk",
                "@dusk+2b+",
                "+",
                "-",
                "+-3s",
                "1/2s",
                "3s\u0000",
                "\ud83d\ude00",
                "\ud800",
                "999999:00:00:00",
                "f",
                "b",
                "ms",
                "9999999:00"
            })
    void hostileTextsAreRefused(String text) {
        TextFormatException refusal = refusal(text, ALL);

        assertThat(refusal).isNotNull();
        assertThat(refusal.getMessage())
                .doesNotContain("\u0000")
                .doesNotContain("\n")
                .hasSizeLessThan(200);
    }

    @Test
    void endlessTextsAreRefusedAtOnce() {
        assertThat(refusal("1".repeat(1_000_000) + "s", ALL))
                .hasMessageContaining("is too long for a time")
                .message()
                .hasSizeLessThan(120);
        assertThat(refusal("@" + "dusk+".repeat(39), ALL)).hasMessageContaining("has no readable number");
    }

    private static TextFormatException refusal(String text, TimeContext context) {
        return catchThrowableOfType(TextFormatException.class, () -> TimeText.parse(text, context));
    }
}
