package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.effect.Hits;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.timeline.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Settings that move or hit, and settings that several cues write alike. */
class MovingSettingsTest {
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\na,1,0,0\nb,1,1,0\n");

    /** Where two keys stand at one time it jumps there, and the later one holds. */
    @Test
    void keysMayStandAtOneTime() {
        NumberTrack track = Probe.settings("\"size\": {\"keys\": [[\"0s\", 0], [\"1s\", 0.25], [\"1s\", 0.75]]}")
                .value(Probe.SIZE);
        assertThat(List.of(track.at(0.5), track.at(1), track.at(2))).containsExactly(0.125, 0.75, 0.75);
    }

    static Stream<Object[]> faults() {
        return Cases.of("""
                "color": {"follow": "low", "from": 0, "to": 1}
                    show.json:3:50: error: "color" of probe cannot follow the music; only numbers can: let "opacity" follow, or where there are several colours what goes through them
                "palette": {"follow": "beat"}
                    show.json:3:52: error: "palette" of probe cannot follow the music; only numbers can: let "opacity" follow, or where there are several colours what goes through them
                "palette": "dusk", "part": "rim/tops"
                "palette": "dusk", "part": "rim/🌼🌼🌼🌼"
                "palette": "dusk", "part": "rim/🌼🌼🌼🌼."
                    show.json:3:68: error: "part" of probe is too long; allowed: up to 8 characters
                """);
    }

    /** The cue opens on line 3, its settings at column 42. */
    @ParameterizedTest
    @MethodSource("faults")
    void teachesWhatIsWrong(String with, List<String> problems) {
        assertThat(TestShow.withCue(
                                "prop,pixel,x,y\na,1,0,0\n",
                                "{\"on\": \"a\", \"effect\": \"probe\", \"with\": {" + with + "}}")
                        .with(new Probe())
                        .problems())
                .isEqualTo(problems);
    }

    @Test
    void cuesThatAreWrittenAlikeShareTheirSettings() {
        Probe probe = new Probe();
        cues(
                        "{\"on\": \"a\", \"effect\": \"probe\", \"with\": {\"size\": 0.2}}",
                        "{\"on\": \"b\", \"effect\": \"probe\", \"with\": {\"size\":  0.2}}")
                .with(probe)
                .plan();
        assertThat(probe.settings).hasSize(2);
        assertThat(probe.settings.get(1)).isSameAs(probe.settings.get(0));
    }

    /** What is wrong is told of every cue that says it. */
    @Test
    void everyCueIsToldWhatIsWrongWithIt() {
        String wrong = "{\"on\": \"a\", \"effect\": \"probe\", \"with\": {\"size\": 2}}";
        assertThat(cues(wrong, wrong, wrong).with(new Probe()).problems())
                .extracting(line -> line.replaceAll(" error: .*", ""))
                .containsExactly("show.json:3:49:", "show.json:4:49:", "show.json:5:49:");
    }

    private static TestShow cues(String... cues) {
        return TestShow.of(MAP, "\"layers\": [{\"cues\": [\n" + String.join(",\n", cues) + "\n]}]");
    }

    /** Beats of 120 a minute are 20 frames apart, a marker at 1 s is on frame 40. */
    @ParameterizedTest
    @CsvSource({"beat, 3", "chime, 0"})
    void hitsAreReadByTheirNames(String name, long lastAtFrame75) {
        Bell bell = new Bell();
        ringing("\"beats\": {\"tempo\": 120}, \"markers\": {\"chime\": \"1s\"}, ", name)
                .with(bell)
                .plan();
        Hits hits = bell.hits.get(0);
        assertThat(hits.lastAt(75)).isEqualTo(lastAtFrame75);
    }

    /** Beats that are written wrong are told of once, and not again where they are named. */
    @Test
    void beatsThatAreWrongAreToldOfOnce() {
        assertThat(ringing("\"beats\": {\"tempo\": 0}, ", "beat")
                        .with(new Bell())
                        .problems())
                .singleElement()
                .asString()
                .contains("\"tempo\"");
    }

    private static TestShow ringing(String music, String on) {
        return TestShow.of(
                MAP,
                music + "\"layers\": [{\"cues\": [{\"on\": \"a\", \"effect\": \"bell\", \"with\": {\"on\": \"" + on
                        + "\"}}]}]");
    }
}
