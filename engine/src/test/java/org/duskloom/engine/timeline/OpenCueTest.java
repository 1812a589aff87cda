package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is known of a cue before all of it is read: whether it may be played, and what it is called in messages. */
class OpenCueTest {
    private final Problems problems = new Problems();

    private OpenCue open(String cue, boolean sound) {
        Fields fields =
                Fields.of(Inputs.json(cue), CueFields.CUE, "a cue", problems).orElseThrow();
        return new OpenCue(fields, sound, problems);
    }

    @Test
    void isSoundUntilSomethingIsWrong() {
        problems.error(Location.ofFile("other.json"), "wrong before, elsewhere");
        OpenCue cue = open("{\"name\": \"dew\"}", true);
        assertThat(cue.isSound()).isTrue();
        assertThat(cue.finds(() -> {})).isTrue();
        assertThat(cue.finds(() -> problems.warn(Location.ofFile("x"), "a doubt", "")))
                .isTrue();
        assertThat(cue.isSound()).isTrue();
        assertThat(cue.finds(() -> problems.error(Location.ofFile("x"), "wrong")))
                .isFalse();
        assertThat(cue.isSound()).isFalse();
        assertThat(cue.finds(() -> {})).isTrue();
        assertThat(cue.isSound()).isFalse();
    }

    @Test
    void isNotSoundIfItsNameIsWrongOrItWasWrongBefore() {
        assertThat(open("{\"name\": 7}", true).isSound()).isFalse();
        assertThat(open("{\"name\": \"dew\"}", false).isSound()).isFalse();
    }

    @Test
    void timesThatCannotBeCountedAreAnErrorOfTheCue() {
        OpenCue cue = open("{\"name\": \"dew\"}", true);
        assertThat(cue.finds(() -> {
                    throw new ArithmeticException("overflow");
                }))
                .isFalse();
        assertThat(cue.isSound()).isFalse();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "in.json:1:1: error: the times of the cue cannot be counted exactly together; use fewer"
                                + " digits behind the dot, or a simpler frame rate");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "{\"name\": \"\"}"})
    void isCalledByItsLineIfItHasNoName(String cue) {
        assertThat(open("\n\n" + cue, true).shown()).isEqualTo("the cue in line 3");
    }

    @Test
    void isCalledByItsName() {
        assertThat(open("{\"name\": \"dew\"}", true).shown()).isEqualTo("\"dew\"");
    }

    @Test
    void endsWithTheLastOfItsPlays() {
        OpenCue cue = open("{}", true);
        assertThat(cue.start()).isEmpty();
        assertThat(cue.length()).isEmpty();
        assertThat(cue.plays()).isEmpty();
        assertThat(cue.end()).isEmpty();
        cue.startsAt(ExactTime.ofSeconds(2));
        cue.lasts(new Lapse.Fixed(ExactTime.ofSeconds(3)));
        assertThat(cue.length()).contains(new Lapse.Fixed(ExactTime.ofSeconds(3)));
        assertThat(cue.end()).isEmpty();
        cue.isPlayed(new Plays(List.of(times(2, 5), times(7, 10)), ExactTime.ofSeconds(100), SettingSteps.NONE));
        assertThat(cue.end()).contains(ExactTime.ofSeconds(10));
        cue.isPlayed(new Plays(List.of(times(2, 5), times(7, 10)), ExactTime.ofSeconds(9), SettingSteps.NONE));
        assertThat(cue.end()).contains(ExactTime.ofSeconds(9));
    }

    @Test
    void hangsOnItsStartUnlessOnAnother() {
        OpenCue cue = open("{}", true);
        assertThat(cue.keyStart()).isEmpty();
        cue.startsAt(ExactTime.ofSeconds(2));
        assertThat(cue.keyStart()).contains(ExactTime.ofSeconds(2));
        cue.isKeyedBy(ExactTime.ofSeconds(1));
        assertThat(cue.keyStart()).contains(ExactTime.ofSeconds(1));
        assertThat(cue.start()).contains(ExactTime.ofSeconds(2));
    }

    private static Plays.Times times(int at, int end) {
        return new Plays.Times(ExactTime.ofSeconds(at), ExactTime.ofSeconds(end));
    }
}
