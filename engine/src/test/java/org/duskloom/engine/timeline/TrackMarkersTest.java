package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.LabelTrack;
import org.duskloom.engine.sound.TrackLabel;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Labels as markers. A label is written here as its text, with the seconds that it lasts behind a colon if it does. */
class TrackMarkersTest {
    private final Problems problems = new Problems();

    /** Labels a second apart, from 1 s on, each in a line of its own. */
    private static LabelTrack track(List<String> labels) {
        List<TrackLabel> track = new ArrayList<>();
        for (String label : labels) {
            String[] parts = label.split(":");
            long second = track.size() + 1L;
            long lasts = parts.length > 1 ? Long.parseLong(parts[1]) : 0;
            track.add(new TrackLabel(
                    ExactTime.ofSeconds(second),
                    ExactTime.ofSeconds(second + lasts),
                    parts[0],
                    new Location("song.txt", (int) second, 1)));
        }
        return new LabelTrack(track);
    }

    private Map<String, InstantNames.Marker> markers(ExactTime starts, List<String> labels) {
        return TrackMarkers.of(track(labels), starts, problems);
    }

    private static String shown(Map<String, InstantNames.Marker> markers) {
        return markers.entrySet().stream()
                .map(marker -> marker.getKey() + " " + marker.getValue().time().orElseThrow())
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            verse,chorus           | verse 1s, chorus 2s
            verse,beat,bar,chorus  | verse 1s, chorus 4s
            verse,verse,verse      | verse 1s, verse 2 2s, verse 3 3s
            verse 2,verse,verse    | verse 2 1s, verse 2s, verse 3 3s
            verse:2,verse          | verse 1s, verse.end 3s, verse 2 2s
            verse,verse:2          | verse 1s, verse 2 2s, verse 2.end 4s
            verse.end,verse:4      | verse.end 1s, verse 2s
            Verse,verse            | Verse 1s, verse 2s
            bar:1,Bar              | Bar 2s
            """)
    void haveTheNamesOfTheirLabelsAndANumberWhereTheyAreEqual(String labels, String markers) {
        assertThat(shown(markers(ExactTime.ZERO, List.of(labels.split(","))))).isEqualTo(markers);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** Times of a track are those of its sound, which may have begun before the show. */
    @ParameterizedTest
    @CsvSource({"2500, 'a 3.5s, a.end 5.5s'", "-1500, 'a -0.5s, a.end 1.5s'"})
    void countFromWhereTheSoundStarts(long milliseconds, String markers) {
        assertThat(shown(markers(ExactTime.ofMilliseconds(milliseconds), List.of("a:2"))))
                .isEqualTo(markers);
    }

    @Test
    void aLabelWithoutTextIsWarnedOfAndLeftOut() {
        assertThat(shown(markers(ExactTime.ZERO, List.of("a", "", "b")))).isEqualTo("a 1s, b 3s");
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "song.txt:2:1: warning: the label at 2s has no text, so that no time can count from it;"
                                + " give it a name, or remove it");
    }

    /** However texts and numbers meet: every label that is no beat gives one marker, in order, at its own place. */
    @Test
    void everyLabelHasAMarker() {
        Random random = new Random(3);
        List<String> texts = List.of("a", "a 2", "a 2 2", "a 3", "b", "beat", "bar");
        for (int round = 0; round < 500; round++) {
            List<String> labels = new ArrayList<>();
            for (int i = random.nextInt(12); i >= 0; i--) {
                labels.add(texts.get(random.nextInt(texts.size())));
            }
            List<Integer> lines = new ArrayList<>();
            for (int i = 0; i < labels.size(); i++) {
                if (!labels.get(i).startsWith("b") || labels.get(i).equals("b")) {
                    lines.add(i + 1);
                }
            }
            assertThat(markers(ExactTime.ZERO, labels).values())
                    .as("%s", labels)
                    .extracting(marker -> marker.location().line())
                    .isEqualTo(lines);
        }
    }
}
