package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

class OverlapsTest {
    private final Problems problems = new Problems();

    /** Props of two pixels each. */
    private static PixelMap map(double[] x, double[] y, double[] z) {
        List<Prop> props = new ArrayList<>();
        for (int i = 0; i < x.length / 2; i++) {
            props.add(new Prop("bed-" + (i + 1), 2 * i, 2, List.of(), new Location("map.csv", 2 + 2 * i, 1)));
        }
        return new PixelMap(props, new Positions(x, y, z), new Positions(x, y, z));
    }

    private static double[] zeros(int count) {
        return new double[count];
    }

    @Test
    void saysNothingWhereEveryPixelHasAPlaceOfItsOwn() {
        PixelMap map = map(new double[] {0, 1, 0, 1}, new double[] {0, 0, 1, 1}, zeros(4));
        assertThat(Overlaps.warned(map, problems)).isSameAs(map);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void tellsTheFirstOfThem() {
        Overlaps.warned(map(new double[] {0, 1, 2, 0, 0, 3}, zeros(6), zeros(6)), problems);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:4:1: warning: 2 pixels hang at the very place of another: pixel 2 of \"bed-2\" and"
                        + " pixel 1 of \"bed-1\"")
                .contains("back to back");
    }

    @Test
    void tellsOneAsOne() {
        Overlaps.warned(map(new double[] {5, 5}, zeros(2), zeros(2)), problems);
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("1 pixel hangs at the very place");
    }

    /** Depth counts: a light behind another is at another place. Both zeros are one. */
    @Test
    void comparesAllThreeCoordinates() {
        Overlaps.warned(map(zeros(4), zeros(4), new double[] {0, 1, 2, 3}), problems);
        assertThat(Inputs.shown(problems)).isEmpty();
        Overlaps.warned(map(new double[] {0.0, -0.0}, zeros(2), zeros(2)), problems);
        assertThat(Inputs.shown(problems)).hasSize(1);
    }

    @Test
    void leavesOutPropsOfWhichMoreWasSaid() {
        PixelMap map = map(new double[] {0, 1, 0, 1, 0, 2}, zeros(6), zeros(6));
        Overlaps.warned(map, (earlier, later) -> earlier == 0 && later == 1, problems);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("1 pixel hangs")
                .contains("pixel 1 of \"bed-3\" and pixel 1 of \"bed-1\"");
    }

    /** As many as a set of places says, also where hundreds are on a grid and the table is full of them. */
    @Test
    void countsThemAll() {
        Random random = new Random(11);
        for (int run = 0; run < 30; run++) {
            int count = 2 * (1 + random.nextInt(400));
            double[] x = random.ints(count, -6, 6).asDoubleStream().toArray();
            double[] y = random.ints(count, -6, 6).asDoubleStream().toArray();
            double[] z = random.ints(count, 0, 3).asDoubleStream().toArray();
            Set<List<Double>> places = new HashSet<>();
            for (int i = 0; i < count; i++) {
                places.add(List.of(x[i] + 0.0, y[i] + 0.0, z[i]));
            }
            int twins = count - places.size();
            Problems found = new Problems();
            Overlaps.warned(map(x, y, z), found);
            String shown = String.join("", Inputs.shown(found));
            assertThat(shown.isEmpty()).isEqualTo(twins == 0);
            if (twins > 0) {
                assertThat(shown).contains("warning: " + twins + (twins == 1 ? " pixel hangs" : " pixels hang"));
            }
        }
    }
}
