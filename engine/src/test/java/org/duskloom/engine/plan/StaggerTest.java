package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

    /** On a slant from 10 to 36 the middle is 23, from which two are as far and one is near; all hang far off. */
    @ParameterizedTest
    @ValueSource(strings = {"x", "y", "z"})
    void measuresFromTheMiddleOfTheMembers(String axis) {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,z\n");
        for (int place : new int[] {10, 20, 36}) {
            int[] at = new int[3];
            at["xyz".indexOf(axis)] = place;
            csv.append("p%s,1,%s,%s,%s\n".formatted(place, at[0], at[1], at[2]));
        }
        assertThat(starts(
                        Maps.map(csv.toString()),
                        "\"on\": [\"p10\", \"p20\", \"p36\"], \"spread\": \"each\", \"stagger\": {\"by\":"
                                + " \"outward\", \"time\": \"1s\"}"))
                .isEqualTo("1000 0 1000");
    }

    /** Two lamps a millionth of a half-side above each other are beside each other; two millionths are not. */
    @ParameterizedTest
    @CsvSource({"0.000001, 0 0", "0.000002, 0 1000"})
    void whatHardlyDiffersStartsTogether(String y, String expected) {
        assertThat(
                        starts(
                                Maps.map("prop,pixel,x,y\na,1,-1,0\nb,1,1," + y + "\n"),
                                "\"on\": [\"a\", \"b\"], \"spread\": \"each\", \"stagger\": {\"by\": \"up\", \"time\": \"1s\"}"))
                .isEqualTo(expected);
    }

    /**
     * Two arches of three arcs, the second wired from the other end, and a bar that has a middle arc only, with a lamp.
     */
    private static final PixelMap ARCS = Maps.map("""
            prop,pixel,x,y,part
            one,1,0,0,arcs/1
            one,2,1,0,arcs/2
            one,3,2,0,arcs/3
            two,1,9,0,arcs/3
            two,2,8,0,arcs/2
            two,3,7,0,arcs/1
            bar,1,5,0,lamp
            bar,2,5,1,arcs/2
            """);

    /** Members in the order of the cue; steps are parts in the order in which the props have them, or props. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            part | one/arcs/1 one/arcs/2 one/arcs/3 two/arcs/1 two/arcs/2 two/arcs/3 | 0 200 400 0 200 400
            prop | one/arcs/1 one/arcs/2 one/arcs/3 two/arcs/1 two/arcs/2 two/arcs/3 | 0 0 0 200 200 200
            part | two/arcs/3 one/arcs/1 two/arcs/1 one/arcs/3                       | 200 0 0 200
            prop | two/arcs/3 one/arcs/1 two/arcs/1 one/arcs/3                       | 0 200 0 200
            part | bar/arcs/2 one/arcs/3 one/arcs/1                                  | 0 400 200
            part | bar/arcs/2 one/arcs/3 one/arcs/2 one/arcs/1                       | 200 400 200 0
            part | one/arcs/1 one/arcs/3 two/arcs/1 two/arcs/2 two/arcs/3            | 0 400 0 200 400
            part | one/arcs/2 bar/arcs/2 bar/lamp                                    | 200 200 0
            part | one/arcs/1 two                                                    | 0 200
            part | one two/arcs/1 two/arcs/2 one/arcs/1                              | 0 200 400 200
            prop | bar two/arcs/1 one bar/lamp two                                   | 0 200 400 0 200
            """)
    void startsPartsOrPropsTogether(String by, String members, String expected) {
        String on = "\"on\": [\"" + members.replace(" ", "\", \"") + "\"]";
        assertThat(starts(
                        ARCS,
                        on + ", \"spread\": \"each\", \"stagger\": {\"by\": \"" + by + "\", \"time\": \"200ms\"}"))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            part ~ "one", "two"                ~ "stagger" is by "part", but no member is another part than the first: all start together; name several parts, such as "one/arcs/*"
            part ~ "one/arcs/2", "bar/arcs/2"  ~ "stagger" is by "part", but no member is another part than the first: all start together; name several parts, such as "one/arcs/*"
            prop ~ "one/arcs/*"                ~ "stagger" is by "prop", but all members are of one prop: all start together; by "members" they follow each other
            """)
    void warnsOfStaggersOfOneStep(String by, String on, String warning) {
        String cue = "{\"effect\": \"probe\", \"spread\": \"each\", \"with\": {\"palette\": \"dusk\"}, \"on\": [" + on
                + "],";
        assertThat(TestShow.withCue(ARCS, cue + "\n\"stagger\": {\"by\": \"" + by + "\", \"time\": \"1s\"}}")
                        .with(new Probe())
                        .problems())
                .containsExactly("show.json:4:12: warning: " + warning);
        assertThat(TestShow.withCue(ARCS, cue + "\n\"stagger\": {\"by\": \"" + by + "\", \"time\": \"0s\"}}")
                        .with(new Probe())
                        .problems())
                .isEmpty();
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

    /**
     * A start between two frames: the first frame that shows the member is the next, and its clock says how late it is.
     */
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
        Map<String, Long> startOf = new HashMap<>();
        for (int i = 0; i < cue.canvasCount(); i++) {
            for (int member = 0; member < probe.canvases.get(i).memberCount(); member++) {
                startOf.put(
                        probe.canvases.get(i).memberName(member), cue.canvas(i).firstFrame());
            }
        }
        String names = fields.replaceAll(".*\"on\": \\[", "").replaceAll("].*", "");
        return Arrays.stream(names.split(", "))
                .map(name -> String.valueOf(startOf.get(name.replace("\"", ""))))
                .collect(Collectors.joining(" "));
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
