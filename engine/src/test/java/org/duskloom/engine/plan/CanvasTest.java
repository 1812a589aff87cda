package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.text.ShortestDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How canvases are laid over members; every value is worked out on paper from the definitions of the reference. */
class CanvasTest {
    /** A slanted row, a square turned on its tip round a middle, and one pixel; wired in this order. */
    private static final PixelMap GARDEN = Maps.map("""
            prop,pixel,x,y,part
            fence,1,0,0,left
            fence,2,4,2,
            fence,3,8,4,right
            daisy,1,20,3,rim/top
            daisy,2,22,1,rim
            daisy,3,20,-1,rim
            daisy,4,18,1,rim
            daisy,5,20,1,eye
            pond,1,6,10,
            """);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "fit": "contain" | -1 0 1   | -0.5 0 0.5
            "fit": "stretch"    | -1 0 1   | -1 0 1
            "fit": "none"    | -4 0 4   | -2 0 2
            "spread": "each" | -1 0 1   | -0.5 0 0.5
            """)
    void fitsOneMember(String field, String x, String y) {
        Canvas canvas = canvas(GARDEN, "\"on\": \"fence\", " + field);
        assertThat(shown(canvas.x())).isEqualTo(x);
        assertThat(shown(canvas.y())).isEqualTo(y);
        assertThat(canvas.z()).containsOnly(0);
        assertThat(canvas.memberCount()).isEqualTo(1);
    }

    /** The box of all three is 0 to 22 by -1 to 10: centre (11, 4.5), half-sides 11 and 5.5. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            contain | -1 -0.636363636364 -0.272727272727 | 1 | -0.409090909091 -0.227272727273 -0.045454545455 | 0.5
            stretch | -1 -0.636363636364 -0.272727272727 | 1 | -0.818181818182 -0.454545454545 -0.090909090909 | 1
            none    | -11 -7 -3                          | 11 | -4.5 -2.5 -0.5                               | 5.5
            """)
    void laysOneCanvasRoundAll(String fit, String fenceX, double daisyTipX, String fenceY, double pondY) {
        Canvas canvas = canvas(GARDEN, "\"on\": [\"daisy\", \"pond\", \"fence\"], \"fit\": \"" + fit + "\"");
        assertThat(shown(Arrays.copyOf(canvas.x(), 3))).isEqualTo(fenceX);
        assertThat(shown(Arrays.copyOf(canvas.y(), 3))).isEqualTo(fenceY);
        assertThat(canvas.x()[4]).isEqualTo(daisyTipX);
        assertThat(canvas.y()[8]).isEqualTo(pondY);
        assertThat(canvas.memberCount()).isEqualTo(1);
        assertThat(canvas.memberOf()).containsOnly(0);
    }

    @Test
    void laysACanvasOverEachMember() {
        Canvas canvas = canvas(GARDEN, "\"on\": [\"daisy\", \"pond\", \"fence\"], \"spread\": \"each\"");
        assertThat(shown(canvas.x())).isEqualTo("-1 0 1 0 1 0 -1 0 0");
        assertThat(shown(canvas.y())).isEqualTo("-0.5 0 0.5 1 0 -1 0 0 0");
        // Pixels stand in the order of the stage, members in the order of the cue.
        assertThat(canvas.memberOf()).containsExactly(2, 2, 2, 0, 0, 0, 0, 0, 1);
        assertThat(canvas.memberCount()).isEqualTo(3);
        assertThat(IntStream.range(0, 3).mapToObj(canvas::memberKey)).doesNotHaveDuplicates();
    }

    /** A straight line has no width, a point neither: 0, never NaN, whatever the fit. */
    @ParameterizedTest
    @CsvSource({"contain", "stretch"})
    void givesZeroAlongADegenerateSide(String fit) {
        PixelMap map = Maps.map("prop,pixel,x,y\nmast,1,7,0\nmast,2,7,5\nmast,3,7,10\nlamp,1,3,4\nlamp,2,3,4\n");
        Canvas mast = canvas(map, "\"on\": \"mast\", \"fit\": \"" + fit + "\"");
        assertThat(mast.x()).containsOnly(0);
        assertThat(shown(mast.y())).isEqualTo("-1 0 1");
        Canvas lamp = canvas(map, "\"on\": \"lamp\", \"fit\": \"" + fit + "\"");
        assertThat(lamp.x()).containsOnly(0);
        assertThat(lamp.y()).containsOnly(0);
    }

    /** What rounding leaves of a turned line's width is no width. */
    @ParameterizedTest
    @CsvSource({"0", "30", "45", "90", "137", "270"})
    void takesATurnedLineForALine(double turnDegrees) {
        double cos = StrictMath.cos(StrictMath.toRadians(turnDegrees));
        double sin = StrictMath.sin(StrictMath.toRadians(turnDegrees));
        double back = StrictMath.toRadians(90 - turnDegrees);
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int i = 0; i <= 10; i++) {
            double x = 1234.5 + 100.0 * i * cos;
            double y = 777.7 + 100.0 * i * sin;
            // Turned on to 90 degrees, every pixel has the same x but for rounding.
            double turnedX = x * StrictMath.cos(back) - y * StrictMath.sin(back);
            double turnedY = x * StrictMath.sin(back) + y * StrictMath.cos(back);
            csv.append("mast,")
                    .append(i + 1)
                    .append(',')
                    .append(turnedX)
                    .append(',')
                    .append(turnedY)
                    .append('\n');
        }
        Canvas canvas =
                canvas(Maps.map(csv.toString()), "\"on\": \"mast\", \"fit\": \"stretch\", \"order\": \"right\"");
        assertThat(canvas.x()).containsOnly(0);
        assertThat(canvas.position()).containsOnly(5);
        assertThat(shown(canvas.y())).isEqualTo("-1 -0.8 -0.6 -0.4 -0.2 0 0.2 0.4 0.6 0.8 1");
    }

    @Test
    void measuresInThreeDimensions() {
        PixelMap map = Maps.map("prop,pixel,x,y,z\npole,1,1,0,-10\npole,2,-1,5,10\npole,3,0,0,6\n");
        Canvas contain = canvas(map, "\"on\": \"pole\"");
        assertThat(shown(contain.x())).isEqualTo("0.1 -0.1 0");
        assertThat(shown(contain.y())).isEqualTo("-0.25 0.25 -0.25");
        assertThat(shown(contain.z())).isEqualTo("-1 1 0.6");
        Canvas fill = canvas(map, "\"on\": \"pole\", \"fit\": \"stretch\"");
        assertThat(shown(fill.x())).isEqualTo("1 -1 0");
        assertThat(shown(fill.y())).isEqualTo("-1 1 -1");
        assertThat(shown(fill.z())).isEqualTo("-1 1 0.6");
        assertThat(shown(canvas(map, "\"on\": \"pole\", \"fit\": \"none\"").z()))
                .isEqualTo("-10 10 6");
    }

    /** A prop on its side: own axes are those of the shape, before it was turned. */
    @Test
    void measuresAlongTheStageOrThePropItself() {
        PixelMap drawn = Maps.map("prop,pixel,x,y\nfence,1,5,0\nfence,2,5,1\nfence,3,5,4\n");
        PixelMap map = new PixelMap(
                drawn.props(),
                drawn.stage(),
                new Positions(new double[] {0, 1, 4}, new double[] {2, 2, 2}, new double[3]));
        Canvas stage = canvas(map, "\"on\": \"fence\", \"spread\": \"each\", \"order\": \"up\"");
        assertThat(stage.x()).containsOnly(0);
        assertThat(shown(stage.y())).isEqualTo("-1 -0.5 1");
        assertThat(shown(stage.position())).isEqualTo("0 1 2");
        Canvas own = canvas(map, "\"on\": \"fence\", \"spread\": \"each\", \"axes\": \"own\", \"order\": \"up\"");
        assertThat(shown(own.x())).isEqualTo("-1 -0.5 1");
        assertThat(own.y()).containsOnly(0);
        assertThat(own.position()).containsOnly(1);
        Canvas alongX = canvas(map, "\"on\": \"fence\", \"spread\": \"each\", \"axes\": \"own\", \"order\": \"right\"");
        assertThat(shown(alongX.position())).isEqualTo("0 1 2");
    }

    /**
     * The pixels of the square are top, right, bottom, left, middle. Side by side they share the middle of their
     * places: up has left, right and middle on places 1 to 3, so on 2; outward the four tips have places 1 to 4, so
     * 2.5; clockwise starts at the top, where the middle stands too.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            wiring    | 0 1 2 3 4       | 5
            right     | 2 4 2 0 2       | 5
            up        | 4 2 0 2 2       | 5
            outward   | 2.5 2.5 2.5 2.5 0 | 5
            clockwise | 0.5 2 3 4 0.5   | 5
            around    | 0.5 2 3 4 0.5   | 5
            members   | 0 0 0 0 0       | 1
            """)
    void putsPixelsInOrder(String order, String positions, int steps) {
        for (String spread : List.of("whole", "each")) {
            Canvas canvas =
                    canvas(GARDEN, "\"on\": \"daisy\", \"order\": \"" + order + "\", \"spread\": \"" + spread + "\"");
            assertThat(shown(canvas.position())).isEqualTo(positions);
            assertThat(canvas.stepCount(0)).isEqualTo(steps);
        }
    }

    /** From 10 to 36 the middle is 23: two pixels are 13 away from it and one is 3, however far off they all hang. */
    @Test
    void measuresDepthFromTheMiddle() {
        PixelMap deep = Maps.map("prop,pixel,x,y,z\nmast,1,0,0,10\nmast,2,0,0,20\nmast,3,0,0,36\n");
        Canvas canvas = canvas(deep, "\"on\": \"mast\", \"order\": \"outward\"");
        assertThat(shown(canvas.position())).isEqualTo("1.5 0 1.5");
        assertThat(canvas.z()[0]).isEqualTo(-1);
        assertThat(canvas.z()[1]).isCloseTo(-3 / 13.0, within(1e-9));
        assertThat(canvas.z()[2]).isEqualTo(1);
    }

    @Test
    void startsClockwiseAtTheTopEvenWhereRoundingPutsItJustBefore() {
        PixelMap map = Maps.map("prop,pixel,x,y\nring,1,-0.0000001,10\nring,2,10,0\nring,3,0,-10\nring,4,-10,0\n");
        assertThat(shown(canvas(map, "\"on\": \"ring\", \"order\": \"clockwise\"")
                        .position()))
                .isEqualTo("0 1 2 3");
    }

    /** Wiring goes through the members in the order of the cue, and through a part in the part's order. */
    @Test
    void followsTheWiringOfAllMembersInTheOrderOfTheCue() {
        Canvas canvas = canvas(GARDEN, "\"on\": [\"pond\", \"daisy/rim\", \"fence\"]");
        assertThat(shown(canvas.position())).isEqualTo("5 6 7 1 2 3 4 0");
        assertThat(canvas.stepCount(0)).isEqualTo(8);
        PixelMap numbered = Maps.map("prop,pixel,x,y,part\na,1,0,0,back#3\na,2,1,0,back#2\na,3,2,0,back#1\n");
        assertThat(shown(canvas(numbered, "\"on\": \"a/back\"").position())).isEqualTo("2 1 0");
    }

    @Test
    void lightsEachMemberAsOneStep() {
        String on = "\"on\": [\"pond\", \"daisy/rim\", \"fence\"], \"order\": \"members\"";
        Canvas whole = canvas(GARDEN, on);
        assertThat(shown(whole.position())).isEqualTo("2 2 2 1 1 1 1 0");
        assertThat(whole.stepCount(0)).isEqualTo(3);
        Canvas each = canvas(GARDEN, on + ", \"spread\": \"each\"");
        assertThat(shown(each.position())).isEqualTo("2 2 2 1 1 1 1 0");
        assertThat(IntStream.range(0, 3).map(each::stepCount)).containsOnly(3);
    }

    @Test
    void countsAPixelOnceWhereMembersShareIt() {
        Canvas canvas = canvas(GARDEN, "\"on\": [\"daisy/eye\", \"daisy\"], \"order\": \"members\"");
        assertThat(shown(canvas.position())).isEqualTo("1 1 1 1 0");
        Canvas wiring = canvas(GARDEN, "\"on\": [\"daisy/eye\", \"daisy\"]");
        assertThat(shown(wiring.position())).isEqualTo("1 2 3 4 0");
    }

    @Test
    void sharesACanvasOnlyBetweenMembersWithoutCommonPixels() {
        List<Canvas> canvases = Probe.canvases(
                GARDEN, "\"on\": [\"daisy\", \"daisy/eye\", \"fence\", \"daisy/rim\"], \"spread\": \"each\"");
        // The eye and the rim both lie in the daisy, and so must be painted after it; the fence may go anywhere.
        assertThat(canvases).extracting(Canvas::pixelCount).containsExactly(5, 1 + 3 + 4);
        assertThat(canvases).extracting(Canvas::memberCount).containsExactly(1, 3);
    }

    @Test
    void findsPartsOfMembers() {
        Canvas each = canvas(GARDEN, "\"on\": [\"fence\", \"daisy\"], \"spread\": \"each\"");
        assertThat(part(each, 0, "right")).containsExactly(2);
        assertThat(part(each, 1, "rim")).containsExactly(3, 4, 5, 6);
        assertThat(part(each, 1, "rim/top")).containsExactly(3);
        assertThat(each.part(0, "rim")).isEmpty();
        assertThat(each.part(1, "daisy/rim")).isEmpty();
        assertThat(each.part(1, "")).isEmpty();
        assertThat(each.knownParts(1)).containsExactly("rim", "rim/top", "eye");
        assertThat(each.knownParts(0)).containsExactly("left", "right");
    }

    @Test
    void findsPartsWithinAPart() {
        Canvas each = canvas(GARDEN, "\"on\": \"daisy/rim\", \"spread\": \"each\"");
        assertThat(part(each, 0, "top")).containsExactly(0);
        assertThat(each.part(0, "rim")).isEmpty();
        assertThat(each.knownParts(0)).containsExactly("top");
    }

    /** The eye shares a canvas with the daisy from which it was taken, but is none of its parts any more. */
    @Test
    void findsNoPartThatAnotherMemberHas() {
        Probe probe = new Probe();
        TestShow.of(GARDEN, """
                        "groups": {"blind": {"all": ["daisy"], "except": ["daisy/eye"]}},
                        "layers": [{"cues": [{"effect": "probe", "on": ["blind", "daisy/eye"], "spread": "each"}]}]""").with(probe).plan();
        assertThat(probe.canvases).hasSize(1);
        assertThat(probe.canvases.get(0).part(0, "eye")).isEmpty();
        assertThat(part(probe.canvases.get(0), 0, "rim")).containsExactly(0, 1, 2, 3);
    }

    @Test
    void findsPartsAndAddressesOnOneCanvasForAll() {
        Canvas whole = canvas(GARDEN, "\"on\": [\"fence\", \"daisy\"]");
        assertThat(part(whole, 0, "rim")).containsExactly(3, 4, 5, 6);
        assertThat(part(whole, 0, "fence")).containsExactly(0, 1, 2);
        assertThat(part(whole, 0, "daisy/eye")).containsExactly(7);
        assertThat(part(whole, 0, "d*/rim")).containsExactly(3, 4, 5, 6);
        assertThat(whole.part(0, "pond")).isEmpty();
        assertThat(whole.part(0, "nothing")).isEmpty();
        assertThat(whole.knownParts(0)).containsExactly("left", "right", "rim", "rim/top", "eye", "fence", "daisy");
    }

    @Test
    void keepsRandomKeysWhateverElseIsOnTheStage() {
        PixelMap alone = Maps.map("prop,pixel,x,y\ndaisy,1,0,0\ndaisy,2,1,0\n");
        PixelMap among = Maps.map("prop,pixel,x,y\nfence,1,9,9\nfence,2,8,8\ndaisy,1,0,0\ndaisy,2,1,0\npond,1,4,4\n");
        for (String spread : List.of("whole", "each")) {
            Canvas few = canvas(alone, "\"on\": \"daisy\", \"spread\": \"" + spread + "\"");
            Canvas more = canvas(among, "\"on\": [\"fence\", \"daisy\", \"pond\"], \"spread\": \"" + spread + "\"");
            assertThat(Arrays.copyOfRange(more.pixelKey(), 2, 4)).containsExactly(few.pixelKey());
            assertThat(Arrays.stream(more.pixelKey()).boxed()).doesNotHaveDuplicates();
        }
        assertThat(canvas(among, "\"on\": [\"fence\", \"daisy\"], \"spread\": \"each\"")
                        .memberKey(1))
                .isEqualTo(
                        canvas(alone, "\"on\": \"daisy\", \"spread\": \"each\"").memberKey(0));
    }

    @Test
    void drawsFromTheCueAndTheSeedToo() {
        int[] keys = canvas(GARDEN, "\"on\": \"daisy\"").pixelKey();
        assertThat(canvas(GARDEN, "\"on\": \"daisy\", \"at\": \"1s\"").pixelKey())
                .isNotEqualTo(keys);
        assertThat(canvas(GARDEN, "\"on\": \"daisy\", \"name\": \"a\"").pixelKey())
                .isEqualTo(canvas(GARDEN, "\"on\": \"daisy\", \"name\": \"a\", \"at\": \"1s\"")
                        .pixelKey())
                .isNotEqualTo(keys);
        Probe probe = new Probe();
        TestShow.of(GARDEN, "\"seed\": 8, \"layers\": [{\"cues\": [{\"effect\": \"probe\", \"on\": \"daisy\"}]}]")
                .with(probe)
                .plan();
        assertThat(probe.canvases.get(0).pixelKey()).isNotEqualTo(keys);
    }

    private static Canvas canvas(PixelMap map, String fields) {
        List<Canvas> canvases = Probe.canvases(map, fields);
        assertThat(canvases).hasSize(1);
        return canvases.get(0);
    }

    private static int[] part(Canvas canvas, int member, String address) {
        Optional<int[]> part = canvas.part(member, address);
        return part.orElseThrow(() -> new AssertionError("no part " + address));
    }

    private static String shown(double[] values) {
        return Arrays.stream(values)
                .mapToObj(value -> ShortestDecimal.of(Math.rint(value * 1e12) / 1e12 + 0.0))
                .collect(Collectors.joining(" "));
    }
}
