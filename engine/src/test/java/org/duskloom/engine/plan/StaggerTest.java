package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When each member starts, in milliseconds; worked out on paper. */
class StaggerTest {
    /** Tips of a compass and its middle, and one half-way to the right of the middle. */
    private static final PixelMap COMPASS = Maps.map("""
            prop,pixel,x,y
            north,1,0,4
            east,1,4,0
            south,1,0,-4
            west,1,-4,0
            middle,1,0,0
            half,1,2,0
            """);

    private static final String ON = "\"on\": [\"north\", \"east\", \"south\", \"west\", \"middle\", \"half\"]";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "200ms"                                   | 0 200 400 600 800 1000
            "0s"                                      | 0 0 0 0 0 0
            {"time": "200ms"}                         | 0 200 400 600 800 1000
            {"by": "members", "time": "200ms"}        | 0 200 400 600 800 1000
            {"by": "right", "time": "800ms"}          | 400 800 400 0 400 600
            {"by": "left", "time": "800ms"}           | 400 0 400 800 400 200
            {"by": "up", "time": "800ms"}             | 800 400 0 400 400 400
            {"by": "down", "time": "800ms"}           | 0 400 800 400 400 400
            {"by": "outward", "time": "800ms"}        | 800 800 800 800 0 400
            {"by": "inward", "time": "800ms"}         | 0 0 0 0 800 400
            {"by": "clockwise", "time": "800ms"}      | 0 200 400 600 0 200
            """)
    void startsMembersOneAfterTheOther(String stagger, String expected) {
        assertThat(starts(COMPASS, ON + ", \"spread\": \"each\", \"stagger\": " + stagger))
                .isEqualTo(expected);
    }

    @Test
    void spreadsMembersAtOnePlaceOverNoTime() {
        PixelMap map = Maps.map("prop,pixel,x,y\na,1,3,0\na,2,5,0\nb,1,4,-1\nb,2,4,1\n");
        for (String by : List.of("right", "up", "outward", "inward", "clockwise")) {
            assertThat(starts(
                            map,
                            "\"on\": [\"a\", \"b\"], \"spread\": \"each\", \"stagger\": {\"time\": \"1s\", \"by\": \""
                                    + by + "\"}"))
                    .isEqualTo("0 0");
        }
    }

    @Test
    void runsTheClockOfALateMemberFromItsOwnStart() {
        PlannedCanvas late = cue(COMPASS, ON + ", \"at\": \"1s\", \"spread\": \"each\", \"stagger\": \"100ms\"")
                .canvas(2);
        assertThat(late.firstFrame()).isEqualTo(48);
        assertThat(late.secondsAt(48)).isZero();
        assertThat(late.secondsAt(88)).isEqualTo(1);
    }

    /** A start between two frames: the first frame that shows the member is the next, and its clock says how late it is. */
    @Test
    void startsBetweenFrames() {
        PlannedCanvas late = cue(COMPASS, ON + ", \"spread\": \"each\", \"stagger\": \"30ms\"")
                .canvas(1);
        assertThat(late.firstFrame()).isEqualTo(2);
        assertThat(late.secondsAt(2)).isEqualTo(0.02);
    }

    @Test
    void sharesACanvasAmongMembersThatStartTogether() {
        PlannedCue cue =
                cue(COMPASS, ON + ", \"spread\": \"each\", \"stagger\": {\"by\": \"right\", \"time\": \"1s\"}");
        assertThat(cue.canvasCount()).isEqualTo(4);
        assertThat(cue.isOverlapping()).isFalse();
    }

    /** The second and third of these overlap the first and each other, but the third starts with the first. */
    @Test
    void paintsLaterMembersOverEarlierOnesWhenTheyOverlap() {
        PixelMap map = Maps.map("prop,pixel,x,y,part\na,1,0,0,one;two;three\na,2,10,0,two\na,3,0,10,three\n");
        PlannedCue cue = cue(
                map,
                "\"on\": [\"a/one\", \"a/two\", \"a/three\"], \"spread\": \"each\","
                        + " \"stagger\": {\"by\": \"right\", \"time\": \"1s\"}");
        assertThat(cue.isOverlapping()).isTrue();
        assertThat(IntStream.range(0, cue.canvasCount())
                        .mapToObj(i -> cue.canvas(i).firstFrame()))
                .containsExactly(0L, 40L, 0L);
    }

    @Test
    void warnsOfMembersThatStartAfterTheEnd() {
        assertThat(TestShow.withCue(
                                COMPASS,
                                "{\"effect\": \"probe\", " + ON
                                        + ", \"for\": \"400ms\", \"spread\": \"each\", \"stagger\": \"100ms\","
                                        + " \"with\": {\"palette\": \"dusk\"}}")
                        .with(new Probe())
                        .problems())
                .containsExactly(
                        "show.json:3:126: warning: 2 of the members would start after the cue has ended: \"middle\", \"half\";"
                                + " shorten \"stagger\" or lengthen the cue");
    }

    /** The start of each member in the order of the cue, from the first frames at 1000 frames a second. */
    private static String starts(PixelMap map, String fields) {
        Probe probe = new Probe();
        TestShow show = new TestShow(map, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 1000, "length": "10s",
                 "layers": [{"cues": [{"effect": "probe", %s}]}]}""".formatted(fields), null).with(probe);
        PlannedCue cue = show.plan().layers().get(0).cues().get(0);
        List<Long> byKey = new ArrayList<>();
        List<String> names = List.of(
                fields.replaceAll(".*\"on\": \\[", "").replaceAll("].*", "").split(", "));
        for (int member = 0; member < names.size(); member++) {
            for (int i = 0; i < cue.canvasCount(); i++) {
                String name = names.get(member).replace("\"", "");
                int firstPixel = map.prop(name).orElseThrow().firstPixel();
                PixelRuns runs = cue.canvas(i).runs();
                for (int run = runs.firstRun(0); run < runs.endRun(0); run++) {
                    if (firstPixel >= runs.cell(run) && firstPixel < runs.cell(run) + runs.length(run)) {
                        byKey.add(cue.canvas(i).firstFrame());
                    }
                }
            }
        }
        return byKey.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static PlannedCue cue(PixelMap map, String fields) {
        return TestShow.withCue(map, "{\"effect\": \"probe\", " + fields + "}")
                .with(new Probe())
                .plan()
                .layers()
                .get(0)
                .cues()
                .get(0);
    }
}
