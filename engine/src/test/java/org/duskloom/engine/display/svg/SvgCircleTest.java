package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.problem.Location;
import org.joml.Vector2d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SvgCircleTest {
    private static SvgCircle circle(double x, double y, String part) {
        return new SvgCircle(x, y, new Location("daisy.svg", (int) Math.abs(x) + 1, 3), part, false);
    }

    private static List<String> parts(SvgPixels pixels) {
        return pixels.parts().entrySet().stream()
                .map(part -> part.getKey() + Arrays.toString(part.getValue()))
                .toList();
    }

    /** A page counts downwards, a shape upwards; the zero point is where the page says. */
    @Test
    void turnsThePageUp() {
        SvgPixels pixels = SvgCircle.pixels(
                List.of(circle(10, 20, ""), circle(110, 5, ""), circle(0, 0, "")), new Vector2d(10, 20));
        assertThat(pixels.count()).isEqualTo(3);
        assertThat(pixels.x()).containsExactly(0, 100, -10);
        assertThat(pixels.y()).containsExactly(0, 15, 20);
        assertThat(pixels.places()).extracting(Location::line).containsExactly(11, 111, 1);
        assertThat(pixels.parts()).isEmpty();
    }

    /** What is in an inner part is in all those round it, in wiring order. */
    @Test
    void innerPartsAreInThoseRoundThem() {
        List<SvgCircle> circles = List.of(
                circle(0, 0, "petals/2"),
                circle(1, 0, ""),
                circle(2, 0, "petals/1/tip"),
                circle(3, 0, "petals/1"),
                circle(4, 0, "petal"),
                circle(5, 0, "petals"));
        assertThat(parts(SvgCircle.pixels(circles, new Vector2d())))
                .containsExactly("petal[4]", "petals[0, 2, 3, 5]", "petals/1[2, 3]", "petals/1/tip[2]", "petals/2[0]");
    }

    /** Less than a millionth of a millimetre is rounding of the way from the drawing; and there is one zero only. */
    @Test
    void theRoundingOfTheWayIsTakenOff() {
        SvgPixels pixels = SvgCircle.pixels(
                List.of(circle(0.1 + 0.2, 1e-10, ""), circle(-1e-10, -0.0, ""), circle(1.0000004, 2.0000006, "")),
                new Vector2d());
        assertThat(pixels.x()).containsExactly(0.3, 0.0, 1.0);
        assertThat(pixels.y()).containsExactly(0.0, 0.0, -2.000001);
        assertThat(1 / pixels.x()[1]).isPositive();
        assertThat(1 / pixels.y()[0]).isPositive();
    }

    /** Where the page's zero point lies changes nothing of how the pixels lie to each other. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void anotherZeroPointMovesAllAlike(long seed) {
        Random random = new Random(seed);
        List<SvgCircle> circles = IntStream.range(0, 50)
                .mapToObj(i -> circle(random.nextInt(8000) / 8.0, random.nextInt(8000) / 8.0, "p"))
                .toList();
        SvgPixels here = SvgCircle.pixels(circles, new Vector2d());
        SvgPixels there = SvgCircle.pixels(circles, new Vector2d(100.5, -40.25));
        for (int i = 0; i < 50; i++) {
            assertThat(there.x()[i]).isEqualTo(here.x()[i] - 100.5);
            assertThat(there.y()[i]).isEqualTo(here.y()[i] - 40.25);
        }
        assertThat(parts(there)).isEqualTo(parts(here));
    }
}
