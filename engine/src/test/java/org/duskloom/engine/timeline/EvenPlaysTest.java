package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.duskloom.engine.document.Field;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plays that are kept as one, against the same plays read one by one. */
class EvenPlaysTest {
    private static Layer layer(String cue) {
        return Timelines.sound("{\"duskloom\": \"timeline/1\", \"map\": \"m.csv\", \"length\": \"10s\","
                        + " \"layers\": [{\"cues\": [{\"on\": \"x\", \"effect\": \"e\", " + cue + "}]}]}")
                .layers()
                .get(0);
    }

    /** A setting that changes to what it is keeps them apart. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "at": "1s", "for": "1s"            | "count": 9
            "at": "50ms", "for": "70ms"        | "count": 100, "every": "40ms"
            "for": "2s"                        | "until": "9s", "every": "300ms"
            "for": "7f", "at": "3f"            | "count": 5
            "for": "1s", "fade": {"in": "1s"}  | "until": "9999ms"
            """)
    void areThoseThatAreReadOneByOne(String times, String repeat) {
        String written = times + ", \"with\": {\"size\": 2}, \"repeat\": {" + repeat;
        Layer even = layer(written + "}");
        Layer apart = layer(written + ", \"change\": {\"size\": [2]}}");
        assertThat(even.parts()).singleElement().isInstanceOf(EvenPlays.class);
        assertThat(apart.parts()).hasSameSizeAs(even.items());
        assertThat(apart.parts()).hasSizeGreaterThan(1).hasOnlyElementsOfType(Cue.class);
        assertThat(even.cues()).hasSameSizeAs(apart.cues());
        for (int play = 0; play < apart.cues().size(); play++) {
            Cue one = even.cues().get(play);
            Cue other = apart.cues().get(play);
            assertThat(List.of(one.at(), one.end(), one.seenUntil(), one.randomKey(), one.fade(), one.blend()))
                    .isEqualTo(List.of(
                            other.at(),
                            other.end(),
                            other.seenUntil(),
                            other.randomKey(),
                            other.fade(),
                            other.blend()));
            assertThat(one.with()).extracting(Field::name).containsExactly("size");
            assertThat(one.changes()).isEmpty();
            assertThat(even.items().get(play)).isEqualTo(one);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"for\": \"1s\"",
                "\"for\": \"1s\", \"repeat\": 1",
                "\"for\": \"1s\", \"repeat\": {\"count\": 3, \"change\": {\"size\": 1}}, \"with\": {\"size\": 1}",
            })
    void othersArePlayedOneByOne(String cue) {
        assertThat(layer(cue).parts()).isNotEmpty().hasOnlyElementsOfType(Cue.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 3})
    void noOtherPlayIsAskedFor(int number) {
        EvenPlays plays =
                (EvenPlays) layer("\"for\": \"1s\", \"repeat\": 3").parts().get(0);
        assertThat(plays.plays()).hasSize(3);
        assertThatThrownBy(() -> plays.plays().get(number)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
