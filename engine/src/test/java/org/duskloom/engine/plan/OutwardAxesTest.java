package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.text.ShortestDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Canvases that are turned outward, and rings that are run round from the top: every value is worked out on paper from
 * the definitions of the reference, on a star that hangs turned as well as on one that hangs as it is drawn.
 */
class OutwardAxesTest {
    /**
     * Drawn tips of three pixels from 10 to 14, to the right, up, left and down; then one to the upper right, 3 to 4.
     */
    private static final String STAR = """
            prop,pixel,x,y,part
            star,1,10,0,tips/1
            star,2,12,0,tips/1
            star,3,14,0,tips/1
            star,4,0,10,tips/2
            star,5,0,12,tips/2
            star,6,1,14,tips/2
            star,7,-10,0,tips/3
            star,8,-12,0,tips/3
            star,9,-14,0,tips/3
            star,10,0,-10,tips/4
            star,11,0,-12,tips/4
            star,12,0,-14,tips/4
            star,13,3,4,slant
            star,14,6,8,slant
            star,15,2,11,slant
            star,16,-1,0,hub
            star,17,1,0,hub
            """;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tips/1 | -1 0 1 | 0 0 0
            tips/3 | -1 0 1 | 0 0 0
            tips/4 | -1 0 1 | 0 0 0
            """)
    void pointsOutAlongEveryTip(String part, String along, String across) {
        for (double turn : new double[] {0, 90, 30, 137}) {
            Canvas canvas = on(hung(turn, false), part, "");
            assertThat(shown(canvas.x())).as("turned by %s", turn).isEqualTo(along);
            assertThat(shown(canvas.y())).isEqualTo(across);
        }
    }

    /**
     * The box of the slant is 2 to 6 by 4 to 11, so its middle (4, 7.5) lies from that of the star, (0, 0), along (8,
     * 15) / 17. Its pixels lie at (3, 4), (6, 8) and (2, 11): along 84/17, 168/17 and 181/17, across (to the left)
     * -13/17, -26/17 and 58/17. The middle of their own box is 132.5/17 along and 16/17 across, its longer half-side
     * 48.5/17.
     */
    @Test
    void turnsBySlantedDirections() {
        for (double turn : new double[] {0, 90, 30, 137}) {
            Canvas canvas = on(hung(turn, false), "slant", "");
            assertClose(canvas.x(), -48.5 / 48.5, 35.5 / 48.5, 48.5 / 48.5);
            assertClose(canvas.y(), -29 / 48.5, -42 / 48.5, 42 / 48.5);
            Canvas unfitted = on(hung(turn, false), "slant", ", \"fit\": \"none\"");
            assertClose(unfitted.x(), -48.5 / 17, 35.5 / 17, 48.5 / 17);
        }
    }

    /**
     * Up stands a quarter turn counter-clockwise from outward as the shape is drawn; a mirror mirrors it with the
     * shape.
     */
    @Test
    void keepsUpOnTheSameSideOfTheShape() {
        for (boolean mirrored : new boolean[] {false, true}) {
            Canvas up = on(hung(0, mirrored), "tips/2", "");
            // Box 0 to 1 by 10 to 14: outward is (0.5, 12) / 12.01; the bent end lies to the right, so across is below
            // zero.
            assertThat(up.x()[0]).isLessThan(-0.9);
            assertThat(up.x()[2]).isCloseTo(1, Offset.offset(0.01));
            assertThat(up.y()[2]).isLessThan(0);
            assertThat(up.y()[0]).isGreaterThan(up.y()[2]);
        }
    }

    @Test
    void runsAnOrderOutward() {
        Canvas right = on(hung(30, false), "tips/3", ", \"order\": \"right\"");
        assertThat(shown(right.position())).isEqualTo("0 1 2");
        Canvas slant = on(hung(30, false), "slant", ", \"order\": \"up\"");
        assertThat(shown(slant.position())).isEqualTo("1 0 2");
    }

    @Test
    void givesEveryMemberADirectionOfItsOwn() {
        Canvas canvas = canvas(hung(90, false), "\"on\": \"star/tips/*\", \"spread\": \"each\", \"axes\": \"outward\"");
        double[] x = canvas.x();
        for (int tip = 0; tip < 4; tip++) {
            assertThat(x[3 * tip]).isLessThan(-0.99);
            assertThat(x[3 * tip + 2]).isCloseTo(1, Offset.offset(0.01));
        }
    }

    /** The whole star and its hub have the star's middle: they keep the axes in which it is drawn. */
    @Test
    void keepsTheOwnAxesOfWhatHasNoDirection() {
        for (String address : List.of("star", "star/hub", "star/tips")) {
            String on = "\"on\": \"" + address + "\", \"spread\": \"each\"";
            Canvas outward = canvas(hung(90, false), on + ", \"axes\": \"outward\"");
            Canvas own = canvas(hung(90, false), on + ", \"axes\": \"own\"");
            assertThat(outward.x()).isEqualTo(own.x());
            assertThat(outward.y()).isEqualTo(own.y());
        }
    }

    /** Every play of a scene may be on other props; the slip is one all the same. */
    @Test
    void warnsOnceOfACueThatIsPlayedOnOneMemberAfterTheOther() {
        String cue = "{\"on\": \"x\", \"spread\": \"each\", \"axes\": \"outward\", \"effect\": \"probe\","
                + " \"with\": {\"palette\": \"white\"}}";
        String scenes = "\"s\": {\"length\": \"1s\", \"layers\": [{\"cues\": [" + cue + "]}]}";
        String cues =
                "{\"scene\": \"s\", \"on\": {\"x\": \"star\"}}, {\"scene\": \"s\", \"on\": {\"x\": \"star/hub\"}}";
        assertThat(TestShow.of(Maps.map(STAR), "\"layers\": [{\"cues\": [" + cues + "]}], \"scenes\": {" + scenes + "}")
                        .with(new Probe())
                        .problems())
                .singleElement()
                .asString()
                .contains("\"axes\" is \"outward\", but the middle of 1 of the 1 members");
    }

    @Test
    void warnsOfWhatHasNoDirectionAtThePlaceOfTheAxes() {
        String fields =
                "\"effect\": \"probe\", \"with\": {\"palette\": \"dusk\"}, \"spread\": \"each\",\n\"axes\": \"outward\"";
        assertThat(TestShow.withCue(
                                Maps.map(STAR), "{" + fields + ", \"on\": [\"star\", \"star/tips/*\", \"star/hub\"]}")
                        .with(new Probe())
                        .problems())
                .containsExactly(
                        "show.json:4:9: warning: \"axes\" is \"outward\", but the middle of 2 of the 6 members is that of its"
                                + " prop, so they keep the prop's own axes: \"star\", \"star/hub\"; name parts that lie about the middle, such as"
                                + " \"star/tips/*\"");
        assertThat(TestShow.withCue(Maps.map(STAR), "{" + fields + ", \"on\": \"star/tips/*\"}")
                        .with(new Probe())
                        .problems())
                .isEmpty();
        assertThat(TestShow.withCue("prop,pixel,x,y\nlamp,1,3,4\n", "{" + fields + ", \"on\": \"lamp\"}")
                        .with(new Probe())
                        .problems())
                .containsExactly(
                        "show.json:4:9: warning: \"axes\" is \"outward\", but the middle of 1 of the 1 members is that of its"
                                + " prop, so they keep the prop's own axes: \"lamp\"; name parts that lie about the middle");
    }

    /** Nearer than a millionth of the prop is no direction; two millionths are one. */
    @ParameterizedTest
    @CsvSource({"0.9, -1 1 0 0", "2.1, 0 0 1 -1"})
    void takesWhatIsHardlyAsideForTheMiddle(double millionths, String expected) {
        double y = 10 * millionths * 1e-6;
        PixelMap map =
                Maps.map("prop,pixel,x,y,part\na,1,-10,0,\na,2,10,0,\na,3,-1," + y + ",bar\na,4,1," + y + ",bar\n");
        Canvas canvas = canvas(map, "\"on\": \"a/bar\", \"spread\": \"each\", \"axes\": \"outward\"");
        String shown = shown(canvas.x()) + " " + shown(canvas.y());
        assertThat(shown).isEqualTo(expected);
    }

    /**
     * A ring of four that is drawn from the top clockwise, hung as it is and a quarter turn counter-clockwise, so that
     * its first pixel lies to the left: along own axes the light starts there, around at what is on top now.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            clockwise | own   | 0 1 2 3 | 0 1 2 3
            clockwise | stage | 0 1 2 3 | 3 0 1 2
            around    | stage | 0 1 2 3 | 3 0 1 2
            around    | own   | 0 1 2 3 | 3 0 1 2
            """)
    void startsAtTheTopAsTheAudienceSeesIt(String order, String axes, String upright, String turned) {
        String fields = ", \"spread\": \"each\", \"order\": \"" + order + "\", \"axes\": \"" + axes + "\"";
        PixelMap rings = rings();
        assertThat(shown(canvas(rings, "\"on\": \"upright\"" + fields).position()))
                .isEqualTo(upright);
        assertThat(shown(canvas(rings, "\"on\": \"turned\"" + fields).position()))
                .isEqualTo(turned);
    }

    /** On one canvas members follow each other, each from its own top; a pixel that two have belongs to the first. */
    @Test
    void goesRoundMemberAfterMember() {
        PixelMap rings = rings();
        Canvas both = canvas(rings, "\"on\": [\"turned\", \"upright\"], \"order\": \"around\"");
        assertThat(shown(both.position())).isEqualTo("4 5 6 7 3 0 1 2");
        assertThat(both.stepCount(0)).isEqualTo(8);
        Canvas shared = canvas(rings, "\"on\": [\"turned/low\", \"turned\"], \"order\": \"around\"");
        // Low are the pixels at the bottom and to the right of the turned ring, one clockwise from the right.
        assertThat(shown(shared.position())).isEqualTo("3 2 0 1");
    }

    /** A millionth of a half-side from the middle is still the middle; two millionths are not. */
    @ParameterizedTest
    @CsvSource({"0.000001, true", "0.000002, false"})
    void aPartAtTheMiddleHasNoDirection(String x, boolean undirected) {
        OutwardAxes axes = new OutwardAxes(Maps.map("prop,pixel,x,y\nstar,1,-1,0\nstar,2," + x + ",0\nstar,3,1,0\n"));
        axes.of(new Member("star/hub", 0, new int[] {1}));
        assertThat(axes.undirected()).hasSize(undirected ? 1 : 0);
    }

    private static PixelMap rings() {
        PixelMap hung = Maps.map("""
                prop,pixel,x,y,part
                upright,1,0,1,
                upright,2,1,0,
                upright,3,0,-1,
                upright,4,-1,0,
                turned,1,9,0,
                turned,2,10,1,
                turned,3,11,0,low
                turned,4,10,-1,low
                """);
        double[] x = {0, 1, 0, -1, 0, 1, 0, -1};
        double[] y = {1, 0, -1, 0, 1, 0, -1, 0};
        return new PixelMap(hung.props(), hung.stage(), new Positions(x, y, new double[8]));
    }

    /** The star as it hangs: mirrored or not, then turned, then moved. */
    private static PixelMap hung(double turnDegrees, boolean mirrored) {
        PixelMap drawn = Maps.map(STAR);
        double cos = Math.cos(Math.toRadians(turnDegrees));
        double sin = Math.sin(Math.toRadians(turnDegrees));
        int count = drawn.pixelCount();
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            double right = mirrored ? -drawn.own().x(i) : drawn.own().x(i);
            x[i] = 700 + right * cos - drawn.own().y(i) * sin;
            y[i] = 50 + right * sin + drawn.own().y(i) * cos;
        }
        return new PixelMap(drawn.props(), new Positions(x, y, new double[count]), drawn.own());
    }

    private static Canvas on(PixelMap map, String part, String more) {
        return canvas(map, "\"on\": \"star/" + part + "\", \"spread\": \"each\", \"axes\": \"outward\"" + more);
    }

    private static Canvas canvas(PixelMap map, String fields) {
        List<Canvas> canvases = new ArrayList<>(Probe.canvases(map, fields));
        assertThat(canvases).hasSize(1);
        return canvases.get(0);
    }

    private static void assertClose(double[] values, double... expected) {
        assertThat(values).hasSameSizeAs(expected);
        for (int i = 0; i < values.length; i++) {
            assertThat(values[i]).isCloseTo(expected[i], Offset.offset(1e-12));
        }
    }

    private static String shown(double[] values) {
        return Arrays.stream(values)
                .mapToObj(value -> ShortestDecimal.of(Math.rint(value * 1e9) / 1e9 + 0.0))
                .collect(Collectors.joining(" "));
    }
}
