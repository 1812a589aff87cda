package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fades by the time of a play, worked out on paper. */
class WrittenFadeTest {
    private static final Location PLACE = new Location("show.json", 5, 9);

    /** Beats at the squares 0 s, 1 s, 4 s, 9 s ...: each lasts two seconds longer than the one before. */
    private static final TimeContext SLOWING = TimeContext.NONE.withBeats(Beats.at(
            IntStream.range(0, 9)
                    .mapToObj(i -> ExactTime.ofSeconds((long) i * i))
                    .toList(),
            List.of()));

    private final Problems problems = new Problems();

    private Fade fade(TimeContext times, String in, String out, long at, long end) throws Exception {
        Lapse coming = TimeText.parseLength(in, times);
        Lapse going = TimeText.parseLength(out, times);
        return new WrittenFade(PLACE, coming, going, Easing.LINEAR, times)
                .over(new Plays.Times(ExactTime.ofSeconds(at), ExactTime.ofSeconds(end)), problems);
    }

    /** What comes counts on from the start and what goes counts back from the end, as the music has it there. */
    @ParameterizedTest
    @CsvSource({
        "1b, 1b, 0, 16, 1s, 7s",
        "1b, 1b, 1, 25, 3s, 9s",
        "2b, 2b, 0, 64, 4s, 28s",
        "1b, 500ms, 4, 16, 5s, 0.5s",
        "250ms, 1b, 0, 9, 0.25s, 5s"
    })
    void beatsAreThoseWhereTheFadeIs(String in, String out, long at, long end, String coming, String going)
            throws Exception {
        Fade fade = fade(SLOWING, in, out, at, end);
        assertThat(fade.in()).hasToString(coming);
        assertThat(fade.out()).hasToString(going);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1s, 0s, true", "0s, 2s, true", "1b, 0s, false", "0s, 1b, false"})
    void isAsLongForEveryPlayUnlessItCountsBeats(String in, String out, boolean fixed) throws Exception {
        Lapse coming = TimeText.parseLength(in, SLOWING);
        Lapse going = TimeText.parseLength(out, SLOWING);
        assertThat(new WrittenFade(PLACE, coming, going, Easing.LINEAR, SLOWING).isFixed())
                .isEqualTo(fixed);
    }

    /** In a scene the clock starts with the scene, the music does not: from 4 s on a beat takes 5 s. */
    @Test
    void beatsInASceneAreThoseOfTheMusic() throws Exception {
        Fade fade = fade(SLOWING.inScene(ExactTime.ofSeconds(4)), "1b", "1b", 0, 12);
        assertThat(fade.in()).hasToString("5s");
        assertThat(fade.out()).hasToString("7s");
    }

    /** To the last instant a fade may take a cue up, and not a thousandth more. */
    @ParameterizedTest
    @CsvSource({"1s, 2s, ''", "1s, 2001ms, the fades take 3.001s", "3001ms, 0s, the fades take 3.001s", "0s, 3s, ''"})
    void bothFitIntoTheCue(String in, String out, String error) throws Exception {
        fade(TimeContext.NONE, in, out, 1, 4);
        assertThat(Inputs.shown(problems))
                .isEqualTo(
                        error.isEmpty() ? List.of() : List.of("show.json:5:9: error: " + error + "; the cue lasts 3s"));
    }

    @Test
    void isToldOfEveryPlayThatIsTooShort() throws Exception {
        fade(SLOWING, "2b", "1b", 0, 4);
        fade(SLOWING, "2b", "1b", 0, 9);
        assertThat(Inputs.shown(problems)).containsExactly("show.json:5:9: error: the fades take 7s; the cue lasts 4s");
    }
}
