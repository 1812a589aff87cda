package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plays of one cue follow each other and have much in common; what they have not is each one's own. */
class PlaysOfACueTest {
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\npond,1,0,0\ngate,1,1,0\n");
    private static final BitSet GATE = BitSet.valueOf(new long[] {0b10});

    private static TestShow played(String cue, String plays) {
        return TestShow.of(
                MAP,
                "\"scenes\": {\"s\": {\"length\": \"3s\", \"layers\": [{\"cues\": [" + cue
                        + "]}]}}, \"layers\": [{\"cues\": [" + plays + "]}]");
    }

    @Test
    void eachIsOnWhatItsNamesStandFor() {
        TestShow show = played(
                "{\"on\": \"leaf\", \"effect\": \"solid\"}",
                "{\"scene\": \"s\", \"on\": {\"leaf\": \"pond\"}}, {\"scene\": \"s\", \"on\": {\"leaf\": \"gate\"}},"
                        + " {\"scene\": \"s\", \"on\": {\"leaf\": \"pond\"}}");
        assertThat(show.plan().layers().get(0).cues())
                .extracting(cue -> cue.isOnOneOf(GATE))
                .containsExactly(false, true, false);
    }

    /** A repeat adds to what is written, or else to the default of a half. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "with": {"size": 0.25}, | 0.25 0.375 0.5
                                    | 0.5 0.625 0.75
            """)
    void eachHasItsOwnStepOfARepeat(String with, String sizes) {
        Probe probe = new Probe();
        String cue = "{\"on\": \"pond\", \"effect\": \"probe\", \"for\": \"1s\", " + (with == null ? "" : with)
                + " \"repeat\": {\"count\": 3, \"change\": {\"size\": 0.125}}}";
        played(cue, "{\"scene\": \"s\"}").with(probe).plan();
        assertThat(probe.settings)
                .extracting(each -> each.value(Probe.SIZE).at(0))
                .isEqualTo(
                        List.of(sizes.split(" ")).stream().map(Double::valueOf).toList());
    }
}
