package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SharedSpaceTest {
    private static final int PROPS = 12;
    private static final int PIXELS_EACH = 40;

    /** Clouds round places in a box. */
    private static PixelMap clouds(double box, double width) {
        Random random = new Random(3);
        int count = PROPS * PIXELS_EACH;
        double[][] places = new double[3][count];
        List<Prop> props = new ArrayList<>();
        for (int prop = 0; prop < PROPS; prop++) {
            props.add(new Prop(
                    "daisy-" + (prop + 1), prop * PIXELS_EACH, PIXELS_EACH, List.of(), Location.ofFile("map.csv")));
            for (double[] along : places) {
                double middle = box * (random.nextDouble() - 0.5);
                for (int i = 0; i < PIXELS_EACH; i++) {
                    along[prop * PIXELS_EACH + i] = middle + width * (random.nextDouble() - 0.5);
                }
            }
        }
        Positions positions = new Positions(places[0], places[1], places[2]);
        return new PixelMap(props, positions, positions);
    }

    /** Against all pairs. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 0.4, 3})
    void knowsEveryPixelThatIsNearToAnotherProp(double near) {
        PixelMap map = clouds(3, 1);
        SharedSpace space = new SharedSpace(map, near);
        for (int a = 0; a < map.pixelCount(); a++) {
            for (int b = 0; b < a; b++) {
                if (map.propIndexOf(a) != map.propIndexOf(b) && SpacingJumps.distance(map.stage(), a, b) <= near) {
                    assertThat(space.isShared(a)).isTrue();
                    assertThat(space.isShared(b)).isTrue();
                }
            }
        }
    }

    /** Where props hang far apart, next to no pixel needs a second look. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.1})
    void leavesAsideWhatHangsApart(double near) {
        PixelMap map = clouds(2000, 1);
        SharedSpace space = new SharedSpace(map, near);
        long shared =
                IntStream.range(0, map.pixelCount()).filter(space::isShared).count();
        assertThat(shared).isLessThan(map.pixelCount() / 2);
    }
}
