package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cues put elsewhere, as scenes in scenes do it, and played again. */
class CueTest {
    private static final ExactTime NEVER = ExactTime.ofSeconds(1_000_000);

    private static Cue cue() {
        return Timelines.cues(
                        "{\"at\": \"1s\", \"for\": \"3s\", \"name\": \"dew\", \"on\": \"x\", \"effect\": \"e\","
                                + " \"with\": {\"size\": 1}, \"fade\": {\"in\": \"1s\"}, \"blend\": \"screen\", \"opacity\": 0.5}")
                .get(0);
    }

    private static SceneCue scene() {
        return (SceneCue) Timelines.sound("""
                {"duskloom": "timeline/1", "map": "m.csv", "length": "9s",
                 "scenes": {"verse": {"length": "3s", "layers": [{"cues": [{"on": "x", "effect": "e"}]}]}},
                 "layers": [{"cues": [{"scene": "verse", "at": "1s", "on": {"x": "y"}}]}]}""").layers().get(0).items().get(0);
    }

    private static ExactTime random(Random random) {
        return new ExactTime(random.nextInt(4000), 1 + random.nextInt(1001));
    }

    /** A scene in a scene in a show: moved twice is moved once by both, and cut by whichever cuts first. */
    @Test
    void movesAddUpAndTheEarliestCutHolds() {
        Random random = new Random(9);
        Cue cue = cue();
        SceneCue scene = scene();
        for (int i = 0; i < 2000; i++) {
            ExactTime inner = random(random);
            ExactTime outer = random(random);
            ExactTime innerCut = random(random);
            ExactTime outerCut = random(random);
            ExactTime cut = Played.earlier(innerCut.plus(outer), outerCut);
            assertThat(cue.moved(inner, innerCut).moved(outer, outerCut)).isEqualTo(cue.moved(inner.plus(outer), cut));
            assertThat(scene.moved(inner, innerCut).moved(outer, outerCut))
                    .isEqualTo(scene.moved(inner.plus(outer), cut));
            for (Played moved : List.of(cue.moved(inner, innerCut), scene.moved(inner, innerCut))) {
                assertThat(moved.at()).isEqualTo(ExactTime.ofSeconds(1).plus(inner));
                assertThat(moved.length()).isEqualTo(ExactTime.ofSeconds(3));
                assertThat(moved.seenUntil()).isEqualTo(Played.earlier(moved.end(), innerCut));
            }
        }
    }

    @Test
    void aMoveByNothingChangesNothing() {
        assertThat(cue().moved(ExactTime.ZERO, NEVER)).isEqualTo(cue());
        assertThat(scene().moved(ExactTime.ZERO, NEVER)).isEqualTo(scene());
        assertThat(cue().moved(ExactTime.ofSeconds(2), NEVER).moved(ExactTime.ofSeconds(-2), NEVER))
                .isEqualTo(cue());
    }

    /** The first play has the random choices of a cue that is not repeated: a repeat leaves it as it was. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void onlyLaterPlaysHaveChoicesOfTheirOwn(boolean ofScene) {
        Played first = ofScene ? scene() : cue();
        List<Plays.Times> times = new ArrayList<>();
        for (int play = 0; play < 3; play++) {
            times.add(new Plays.Times(ExactTime.ofSeconds(3L * play + 1), ExactTime.ofSeconds(3L * play + 4)));
        }
        List<Played> plays =
                new Plays(times, ExactTime.ofSeconds(9), SettingSteps.NONE).of(first, WrittenFade.NONE, new Problems());
        assertThat(plays)
                .extracting(Played::randomKey)
                .containsExactly(first.randomKey(), first.randomKey() + "#1", first.randomKey() + "#2");
        assertThat(plays)
                .extracting(cue -> cue.at() + ".." + cue.end() + " seen until " + cue.seenUntil())
                .containsExactly("1s..4s seen until 4s", "4s..7s seen until 7s", "7s..10s seen until 9s");
        assertThat(plays).extracting(Played::name).containsOnly(first.name());
        assertThat(plays).extracting(Played::blend).containsOnly(first.blend());
        assertThat(plays).extracting(Played::opacity).containsOnly(first.opacity());
        assertThat(plays).extracting(Played::length).containsOnly(ExactTime.ofSeconds(3));
    }

    /** What is played last ends where it is cut, if it is. */
    @Test
    void theEndOfAllPlaysIsThatOfTheLast() {
        ExactTime four = ExactTime.ofSeconds(4);
        assertThat(Plays.once(ExactTime.ZERO, four).lastEnd()).isEqualTo(four);
        List<Plays.Times> times = List.of(new Plays.Times(ExactTime.ZERO, four));
        assertThat(new Plays(times, ExactTime.ofSeconds(3), SettingSteps.NONE).lastEnd())
                .isEqualTo(ExactTime.ofSeconds(3));
    }
}
