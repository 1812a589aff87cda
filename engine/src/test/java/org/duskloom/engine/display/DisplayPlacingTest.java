package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

class DisplayPlacingTest {
    private static final String HOOK = """
            "hook": {"build": [{"points": [[0, 0], [10, 0], [20, 0], [20, 5]]}],
              "parts": {"end": "3-4", "back": "3-1", "pair/1": "1, 2", "pair/2": "3, 4", "both": ["end", "back"]}}
            """;

    private static Display hooks(String props) {
        return Displays.display(HOOK, props);
    }

    private static List<String> parts(Prop prop) {
        return prop.partPaths().stream()
                .map(path ->
                        path + Arrays.toString(prop.part(path).orElseThrow().pixels()))
                .toList();
    }

    @Test
    void keepsBothTheStageAndTheOwnAxes() {
        Display display = hooks("""
                {"name": "a", "shape": "hook", "at": [100, 200]},
                {"name": "b", "shape": "hook", "at": [0, 0, 7], "mirror": "x", "scale": 2, "turn": 90}""");
        PixelMap map = display.map();
        assertThat(map.props()).extracting(Prop::name).containsExactly("a", "b");
        assertThat(map.props()).extracting(Prop::firstPixel).containsExactly(0, 4);
        // a: moved only. b: (20, 5) mirrored (-20, 5), doubled (-40, 10), turned a quarter (-10, -40), moved to z = 7.
        assertThat(map.stage().x(3)).isEqualTo(120);
        assertThat(map.stage().y(3)).isEqualTo(205);
        assertThat(map.stage().x(7)).isEqualTo(-10);
        assertThat(map.stage().y(7)).isEqualTo(-40);
        assertThat(map.stage().z(7)).isEqualTo(7);
        for (int prop = 0; prop < 2; prop++) {
            assertThat(map.own().x(prop * 4 + 3)).isEqualTo(20);
            assertThat(map.own().y(prop * 4 + 3)).isEqualTo(5);
            assertThat(map.own().z(prop * 4 + 3)).isZero();
        }
        assertThat(map.props().get(1).definedAt()).hasToString("garden.json:4:10");
    }

    @Test
    void knowsWhichPropHasWhichShapeAndPlacement() {
        Display display = hooks(
                "{\"name\": \"a\", \"shape\": \"hook\", \"at\": [1, 2], \"tilt\": 3, \"yaw\": 4, \"mirror\": \"y\","
                        + " \"reverse\": true}");
        PlacedProp prop = display.props().get(0);
        assertThat(prop.placement()).isEqualTo(new Placement(Mirror.Y, 1, 0, 3, 4, 1, 2, 0));
        assertThat(prop.shape()).isSameAs(display.shape("hook").orElseThrow());
        assertThat(prop.reversed()).isTrue();
        assertThat(prop.shapePixel(0)).isEqualTo(3);
        assertThat(prop.prop()).isSameAs(display.map().props().get(0));
        assertThat(display.units()).isEqualTo(Units.MILLIMETRES);
        assertThat(display.shape("fence")).isEmpty();
    }

    /** Shape pixels 0 1 2 3 are prop pixels 3 2 1 0; every part still runs over the same places in the same order. */
    @Test
    void reversingTurnsTheWireButNoPart() {
        Display display = hooks("""
                {"name": "a", "shape": "hook", "at": [0, 0]},
                {"name": "b", "shape": "hook", "at": [0, 0], "reverse": true}""");
        PixelMap map = display.map();
        for (int i = 0; i < 4; i++) {
            assertThat(map.stage().x(4 + i)).isEqualTo(map.stage().x(3 - i));
            assertThat(map.own().y(4 + i)).isEqualTo(map.own().y(3 - i));
        }
        assertThat(parts(map.props().get(0)))
                .containsExactlyInAnyOrder(
                        "end[2, 3]",
                        "back[2, 1, 0]",
                        "pair[0, 1, 2, 3]",
                        "pair/1[0, 1]",
                        "pair/2[2, 3]",
                        "both[2, 3, 1, 0]");
        assertThat(parts(map.props().get(1)))
                .containsExactlyInAnyOrder(
                        "end[1, 0]",
                        "back[1, 2, 3]",
                        "pair[3, 2, 1, 0]",
                        "pair/1[3, 2]",
                        "pair/2[1, 0]",
                        "both[1, 0, 2, 3]");
    }

    @Test
    void groupsReachPartsOfProps() {
        String json = Displays.json(HOOK, """
                {"name": "a", "shape": "hook", "at": [0, 0]},
                {"name": "b", "shape": "hook", "at": [0, 50], "reverse": true}""");
        json = json.substring(0, json.length() - 1)
                + ", \"groups\": {\"ends\": \"*/end\", \"all\": [\"ends\", \"*/pair/1\"]}}";
        Display display = Displays.display(json, Map.of());
        List<TextNode> all = List.of(new TextNode(Location.ofFile("x"), "all"));
        assertThat(display.groups().resolve(all, new Problems()).orElseThrow())
                .extracting(Member::toString)
                .containsExactly("a/end [2, 3]", "b/end [5, 4]", "a/pair/1 [0, 1]", "b/pair/1 [7, 6]");
    }

    @Test
    void readsShapesFromFiles() {
        String json =
                "{\"duskloom\": \"display/1\", \"units\": \"in\", \"shapes\": {\"fence\": {\"pixels\": \"fence.csv\", \"parts\":"
                        + " {\"posts/odd\": \"1, 3\"}}}, \"props\": [{\"name\": \"f\", \"shape\": \"fence\", \"at\": [1, 1]}]}";
        Display display = Displays.display(
                json, Map.of("fence.csv", "pixel,x,y,part\n1,0,0,posts#3\n2,5,0,posts#2\n3,10,0,posts#1;gate\n"));
        assertThat(parts(display.map().props().get(0)))
                .containsExactlyInAnyOrder("posts[2, 1, 0]", "posts/odd[0, 2]", "gate[2]");
        assertThat(display.map().stage().x(2)).isEqualTo(11);
        assertThat(display.shapes().get(0).runs())
                .containsExactly(new Shape.Run("pixels", 0, 3, new Location("fence.csv", 2, 1), List.of(2, 3, 4)));
        assertThat(display.units().millimetres()).isEqualTo(25.4);
    }

    @Test
    void partsOfAShapeAreSharedByItsProps() {
        Display display = hooks(
                "{\"name\": \"a\", \"shape\": \"hook\", \"at\": [0, 0]}, {\"name\": \"b\", \"shape\": \"hook\", \"at\": [9, 9]}");
        Part a = display.map().props().get(0).part("end").orElseThrow();
        assertThat(display.map().props().get(1).part("end").orElseThrow()).isSameAs(a);
    }
}
