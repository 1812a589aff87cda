package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.DisplayReader;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.TestShow;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * As built, not as drawn: along the axes of the stage, a prop that was drawn upright and hangs turned shows the same
 * picture as one whose pixels simply lie where the turned prop's lie.
 */
class TurnedPropTest {
    /** A ring of eight, a slanted stroke, and a straight row that is easily taken for a degenerate box. */
    private static final double[][][] SHAPES = {ring(), {{0, 0}, {10, 3}, {20, 9}, {30, 9}, {30, -4}}, row()};

    static Stream<Arguments> looks() {
        List<Arguments> looks = new ArrayList<>();
        for (int shape = 0; shape < SHAPES.length; shape++) {
            for (double turn : new double[] {0, 30, 45, 90, 137.5, 180, 270}) {
                looks.add(Arguments.of(shape, turn));
            }
        }
        return looks.stream();
    }

    @ParameterizedTest
    @MethodSource("looks")
    void showsWhatABareMapShows(int shape, double turnDegrees) {
        PixelMap placed = placed(SHAPES[shape], turnDegrees);
        PixelMap bare = bare(SHAPES[shape], turnDegrees);
        int last = placed.pixelCount() - 1;
        for (String fit : List.of("contain", "stretch", "none")) {
            for (String order : List.of("right", "up", "outward", "clockwise", "members")) {
                for (String effect : List.of("place", "rank")) {
                    byte[] expected = frame(bare, effect, fit, order);
                    byte[] actual = frame(placed, effect, fit, order);
                    for (int pixel = 0; pixel <= last; pixel++) {
                        // The bare map is wired from the other end, which must not matter. Blue of rank is random.
                        for (int channel = 0; channel < (effect.equals("rank") ? 2 : 3); channel++) {
                            assertThat(Frames.codes(actual, pixel)[channel])
                                    .as("%s, %s, %s, pixel %s, channel %s", effect, fit, order, pixel, channel)
                                    .isCloseTo(Frames.codes(expected, last - pixel)[channel], Offset.offset(1));
                        }
                    }
                }
            }
        }
    }

    private static byte[] frame(PixelMap map, String effect, String fit, String order) {
        return Frames.frame(
                TestShow.withCue(
                                map,
                                "{\"on\": \"*\", \"effect\": \"%s\", \"spread\": \"each\", \"axes\": \"stage\", \"fit\": \"%s\", \"order\": \"%s\"}"
                                        .formatted(effect, fit, order))
                        .plan(),
                0);
    }

    /** The shape as the display places it. */
    private static PixelMap placed(double[][] shape, double turnDegrees) {
        StringBuilder points = new StringBuilder();
        for (double[] point : shape) {
            points.append(points.isEmpty() ? "" : ", ")
                    .append('[')
                    .append(point[0])
                    .append(", ")
                    .append(point[1])
                    .append(']');
        }
        Problems problems = new Problems();
        Optional<Display> display = DisplayReader.read(
                Inputs.json("""
                        {"duskloom": "display/1", "shapes": {"s": {"build": [{"points": [%s]}]}},
                         "props": [{"name": "a", "shape": "s", "at": [1500, 800], "turn": %s}]}""".formatted(points, turnDegrees)), (written, all) -> Optional.empty(), problems);
        assertThat(Inputs.shown(problems)).isEmpty();
        return display.orElseThrow().groups().map();
    }

    /** The same places, by the formula of a turn counter-clockwise, wired from the other end. */
    private static PixelMap bare(double[][] shape, double turnDegrees) {
        double cos = StrictMath.cos(StrictMath.toRadians(turnDegrees));
        double sin = StrictMath.sin(StrictMath.toRadians(turnDegrees));
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int i = 0; i < shape.length; i++) {
            double[] point = shape[shape.length - 1 - i];
            csv.append("b,").append(i + 1).append(',').append(1500 + point[0] * cos - point[1] * sin);
            csv.append(',').append(800 + point[0] * sin + point[1] * cos).append('\n');
        }
        return Maps.map(csv.toString());
    }

    private static double[][] ring() {
        double[][] ring = new double[8][];
        for (int i = 0; i < 8; i++) {
            double angle = StrictMath.toRadians(45.0 * i);
            ring[i] = new double[] {90 * StrictMath.cos(angle), 90 * StrictMath.sin(angle)};
        }
        return ring;
    }

    private static double[][] row() {
        double[][] row = new double[7][];
        for (int i = 0; i < 7; i++) {
            row[i] = new double[] {12.5 * i - 30, 0};
        }
        return row;
    }
}
