package org.duskloom.engine.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** A display of 100,000 pixels in 2,000 props with 2,000 groups and 10,000 address lists. */
class GroupScaleTest {
    private static final int PROPS = 2_000;
    private static final int PIXELS = 50;

    @Test
    void resolvesALargeDisplay() {
        PixelMap map = Maps.map(csv());
        Problems problems = new Problems();
        GroupTree tree = GroupReader.read(Inputs.json(groups()), map, problems);
        long pixels = 0;
        for (int i = 0; i < 10_000; i++) {
            pixels +=
                    resolve(tree, problems, "daisy-" + i % PROPS, "daisy-" + i % PROPS + "/rim", "group-" + i % PROPS);
        }
        // 50 of the prop, 25 of its rim, and the next prop's 50, ten thousand times.
        assertThat(pixels).isEqualTo(10_000L * 125);
        assertThat(resolve(tree, problems, "*/rim")).isEqualTo(PROPS * 25L);
        assertThat(resolve(tree, problems, "all")).isEqualTo(PROPS * (long) PIXELS);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void staysQuickWithTenThousandWrongAddresses() {
        GroupTree tree = GroupTree.of(Maps.map(csv()));
        Problems problems = new Problems();
        for (int i = 0; i < 10_000; i++) {
            resolve(tree, problems, "dasiy-" + i, "daisy-1/rmi");
        }
        assertThat(problems.errorCount()).isEqualTo(20_000);
        assertThat(problems.inFileOrder().get(0).hint()).startsWith("did you mean \"daisy-0\"?");
    }

    private static long resolve(GroupTree tree, Problems problems, String... addresses) {
        List<TextNode> nodes = new ArrayList<>();
        for (String address : addresses) {
            nodes.add(new TextNode(Location.ofFile("show.json"), address));
        }
        return tree.resolve(nodes, problems).orElse(List.of()).stream()
                .mapToLong(Member::pixelCount)
                .sum();
    }

    private static String csv() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        for (int prop = 0; prop < PROPS; prop++) {
            for (int pixel = 1; pixel <= PIXELS; pixel++) {
                csv.append("daisy-").append(prop).append(',').append(pixel).append(',');
                csv.append(prop * 10).append(',').append(pixel).append(pixel % 2 == 0 ? ",rim\n" : ",\n");
            }
        }
        return csv.toString();
    }

    private static String groups() {
        StringBuilder groups = new StringBuilder("{\"all\": [\"group-*\"]");
        for (int i = 0; i < PROPS; i++) {
            groups.append(",\n\"group-")
                    .append(i)
                    .append("\": [\"daisy-")
                    .append((i + 1) % PROPS)
                    .append("\"]");
        }
        return groups.append("}").toString();
    }
}
