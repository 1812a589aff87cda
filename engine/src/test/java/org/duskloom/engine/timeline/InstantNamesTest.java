package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two lists of cues, one of them with two of one name, and markers. */
class InstantNamesTest {
    private final OpenCue dew = cue("dew", 1);
    private final OpenCue otherDew = cue("dew", 5);
    private final OpenCue rise = cue("rise", 2);
    private final OpenCue twin = cue("twin", 3);
    private final OpenCue otherTwin = cue("twin", 4);
    private final OpenCue nameless = cue("", 6);
    private final Map<String, InstantNames.Marker> markers = Map.of(
            "drop", marker(Optional.of(ExactTime.ofSeconds(7)), 1),
            "rise", marker(Optional.of(ExactTime.ofSeconds(8)), 2),
            "late", marker(Optional.empty(), 3));
    private final InstantNames names =
            new InstantNames(List.of(List.of(dew, rise, nameless), List.of(otherDew, twin, otherTwin)), markers);

    private static OpenCue cue(String name, int second) {
        Problems problems = new Problems();
        Fields fields = Fields.of(Inputs.json("{\"name\": \"" + name + "\"}"), CueFields.CUE, "a cue", problems)
                .orElseThrow();
        OpenCue cue = new OpenCue(fields, true, problems);
        cue.startsAt(ExactTime.ofSeconds(second));
        cue.isPlayed(Plays.once(ExactTime.ofSeconds(second), ExactTime.ofSeconds(second + 10L)));
        return cue;
    }

    private static InstantNames.Marker marker(Optional<ExactTime> time, int line) {
        return new InstantNames.Marker(time, new Location("song.txt", line, 1));
    }

    @Test
    void areThoseOfCuesWithTheirEndsAndOfMarkers() {
        assertThat(names.labels())
                .containsExactlyInAnyOrder("dew", "dew.end", "rise", "rise.end", "twin", "twin.end", "drop", "late");
    }

    /** What is used in no list, on a command line say, may count from what has one meaning only. */
    @Test
    void areClearWhereTheyMeanOneThingWhoeverAsks() {
        assertThat(names.clear())
                .containsOnlyKeys("rise.end", "drop")
                .containsEntry("rise.end", ExactTime.ofSeconds(12))
                .containsEntry("drop", ExactTime.ofSeconds(7));
    }

    @ParameterizedTest
    @CsvSource({"@dew, 1s, 5s", "@dew.end, 11s, 15s", "@dew+1s, 1s, 5s", "@rise.end, 12s, 12s", "@drop, 7s, 7s"})
    void meanTheCueOfTheSameListFirst(String time, String inFirst, String inSecond) {
        assertThat(time(nameless, time)).hasToString(inFirst);
        assertThat(time(twin, time)).hasToString(inSecond);
    }

    private ExactTime time(OpenCue cue, String time) {
        InstantNames.Meaning meaning = names.meaning(cue, time).orElseThrow();
        assertThat(meaning.isClear()).isTrue();
        return meaning.time().orElseThrow();
    }

    /** A marker has no list, so that a cue of its name is meant as well, in whatever list that is. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            @twin     | the cue at in.json:1:1, the cue at in.json:1:1
            @twin.end | the cue at in.json:1:1, the cue at in.json:1:1
            @rise+1s  | the marker at song.txt:2:1, the cue at in.json:1:1
            """)
    void areNotClearWhereTheyMeanTwo(String time, String places) {
        for (OpenCue asking : List.of(dew, twin)) {
            InstantNames.Meaning meaning = names.meaning(asking, time).orElseThrow();
            assertThat(meaning.isClear()).isFalse();
            assertThat(String.join(", ", meaning.places())).isEqualTo(places);
        }
    }

    /** A marker that cannot be read is one all the same: what counts from it has no time, and no name is missing. */
    @Test
    void mayHaveNoTimeYet() {
        InstantNames.Meaning meaning = names.meaning(dew, "@late-1s").orElseThrow();
        assertThat(meaning.isClear()).isTrue();
        assertThat(meaning.time()).isEmpty();
        assertThat(meaning.label()).isEqualTo("late");
    }

    @ParameterizedTest
    @CsvSource({"@nobody", "dew", "1s", "@", "@dewy", "@.end"})
    void meanNothingWhereThereIsNoSuchName(String time) {
        assertThat(names.meaning(dew, time)).isEmpty();
    }
}
