package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;

class PixelMapTest {
    private static final Location PLACE = Location.ofFile("map.csv");

    private static Prop prop(String name, int first, int count, Part... parts) {
        return new Prop(name, first, count, List.of(parts), PLACE);
    }

    private static Positions positions(int count) {
        return new Positions(new double[count], new double[count], new double[count]);
    }

    @Test
    void findsPropsByNameAndByPixel() {
        PixelMap map = new PixelMap(List.of(prop("fence", 0, 3), prop("arch", 3, 2)), positions(5), positions(5));
        assertThat(map.pixelCount()).isEqualTo(5);
        assertThat(map.prop("arch").orElseThrow().firstPixel()).isEqualTo(3);
        assertThat(map.propIndex("arch")).hasValue(1);
        assertThat(map.prop("pond")).isEmpty();
        assertThat(map.propIndex("pond")).isEmpty();
        assertThat(IntStream.range(0, 5).map(map::propIndexOf)).containsExactly(0, 0, 0, 1, 1);
    }

    @Test
    void findsPartsByPath() {
        Part one = new Part("1", new int[] {2}, List.of());
        Part petals = new Part("petals", new int[] {1, 2}, List.of(one));
        Prop daisy = prop("daisy", 0, 3, petals);
        assertThat(daisy.part("petals")).contains(petals);
        assertThat(daisy.part("petals/1")).contains(one);
        assertThat(daisy.part("1")).isEmpty();
        assertThat(daisy.part("petals/1/1")).isEmpty();
        assertThat(daisy.part("petals/")).isEmpty();
        assertThat(daisy.part("")).isEmpty();
        assertThat(daisy.partPaths()).containsExactly("petals", "petals/1");
    }

    @Test
    void refusesPropsThatDoNotFollowEachOther() {
        Positions five = positions(5);
        for (List<Prop> props : List.of(
                List.<Prop>of(),
                List.of(prop("a", 0, 4)),
                List.of(prop("a", 0, 6)),
                List.of(prop("a", 1, 4)),
                List.of(prop("a", 0, 2), prop("b", 3, 2)),
                List.of(prop("a", 0, 2), prop("a", 2, 3)))) {
            assertThatIllegalArgumentException().isThrownBy(() -> new PixelMap(props, five, five));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PixelMap(List.of(prop("a", 0, 5)), five, positions(4)));
    }

    @Test
    void refusesPropsAndPositionsThatAreUnsound() {
        Part beyond = new Part("rim", new int[] {3}, List.of());
        assertThatIllegalArgumentException().isThrownBy(() -> prop("a", 0, 3, beyond));
        assertThatIllegalArgumentException().isThrownBy(() -> prop("a", 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> prop("a*", 0, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Positions(new double[] {Double.NaN}, new double[1], new double[1]));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Positions(new double[2], new double[1], new double[1]));
    }
}
