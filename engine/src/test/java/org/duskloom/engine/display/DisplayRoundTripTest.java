package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.MapWriter;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The map that a display leads to can be written as CSV and read back as the same map, with the same groups. */
class DisplayRoundTripTest {
    private static final String SHAPES = """
            "daisy": {"build": [
                {"ring": {"count": 12, "radius": 80, "start": 90, "direction": "clockwise"}, "part": "inner"},
                {"spokes": {"count": 5, "pixels": 3, "from": 100, "to": 290, "path": "serpentine"}, "part": "petals"}],
              "parts": {"top": "3-1, 12", "petals/odd": ["petals/5", "petals/3", "petals/1"], "halves/left": "20-13",
                "halves/right": "1-6"}},
            "mast": {"build": [{"helix": {"count": 40, "radius": [300, 20], "height": 900, "turns": 3.5}, "part": "turns"}]},
            "fence": {"pixels": "fence.csv", "parts": {"back": "3-1"}}
            """;
    private static final Map<String, String> FILES =
            Map.of("fence.csv", "pixel,x,y,z,part\n2,10.25,0,1,posts/a\n1,0,-0.0,2,posts/a\n3,21,0.1,-3,posts/b\n");
    private static final String GROUPS =
            "{\"daisies\": [\"p1\", \"p4\"], \"tops\": {\"all\": \"*/top\", \"except\": \"p2/top\"}}";

    private static void assertReadBack(Display display, String groups) throws IOException {
        StringBuilder csv = new StringBuilder();
        MapWriter.write(display.map(), CsvStyle.COMMAS, csv);
        PixelMap map = Maps.map(csv.toString());
        Maps.assertSame(map, display.map());
        GroupTree tree = GroupReader.read(Inputs.json(groups), map, new Problems());
        assertThat(tree.addresses()).isEqualTo(display.groups().addresses());
        for (String address : tree.addresses()) {
            List<TextNode> asked = List.of(new TextNode(Location.ofFile("x"), address));
            assertThat(tree.resolve(asked, new Problems()))
                    .isPresent()
                    .isEqualTo(display.groups().resolve(asked, new Problems()));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void givesTheSameMapAndGroups(long seed) throws IOException {
        Random random = new Random(seed);
        String props = IntStream.rangeClosed(1, 12)
                .mapToObj(i -> prop("p" + i, i % 3 == 1 ? "daisy" : i % 3 == 2 ? "mast" : "fence", random))
                .collect(Collectors.joining(","));
        String json = "{\"duskloom\": \"display/1\", \"shapes\": {" + SHAPES + "}, \"props\": [" + props
                + "], \"groups\": " + GROUPS.replace("p2/top", "p1/top") + "}";
        assertReadBack(Displays.display(json, FILES), GROUPS.replace("p2/top", "p1/top"));
    }

    private static String prop(String name, String shape, Random random) {
        String mirror = random.nextBoolean() ? ", \"mirror\": \"" + "xy".charAt(random.nextInt(2)) + "\"" : "";
        return "{\"name\": \"" + name + "\", \"shape\": \"" + shape + "\", \"at\": [" + random.nextInt(5000) + ", "
                + random.nextInt(50_000) / 8.0 + ", " + random.nextInt(3) + "]" + mirror
                + ", \"scale\": " + (random.nextBoolean() ? 1 : 0.5 + random.nextDouble())
                + ", \"turn\": " + (random.nextBoolean() ? 90 * random.nextInt(4) : random.nextInt(720) - 360)
                + ", \"tilt\": " + random.nextInt(2) * random.nextInt(90)
                + ", \"yaw\": " + random.nextInt(2) * random.nextInt(90)
                + ", \"reverse\": " + random.nextBoolean() + "}";
    }

    @Test
    void holdsForTheGardenOfTheDemos() throws IOException {
        String json = Files.readString(Path.of("../demos/garden/display.json"));
        Display garden = Displays.display(json, Map.of());
        assertThat(garden.map().pixelCount()).isEqualTo(14 * 61 + 2 * 96 + 150 + 92);
        int start = json.indexOf("\"groups\":") + "\"groups\":".length();
        String groups = json.substring(start, json.indexOf("\n  }", start) + "\n  }".length());
        assertReadBack(garden, groups);
    }
}
