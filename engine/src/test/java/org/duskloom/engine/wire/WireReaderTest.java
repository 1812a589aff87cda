package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long wires are: as they are written, or as the places of pixels say. */
class WireReaderTest {
    private static final int PIXELS = 12;

    private final Problems problems = new Problems();

    private static Positions positions(double[]... places) {
        return new Positions(axis(0, places), axis(1, places), axis(2, places));
    }

    private static double[] axis(int axis, double[][] places) {
        return Arrays.stream(places).mapToDouble(place -> place[axis]).toArray();
    }

    private Fields fields(DeclaredObject declared, String json) {
        return Fields.of(Inputs.json(json), declared, "the wire", problems).orElseThrow();
    }

    private PowerLine line(Positions stage, double metresPerUnit, String json, int... pixels) {
        PowerLine line = new WireReader(stage, metresPerUnit, problems)
                .line(fields(PowerFields.LINE, json), pixels)
                .orElseThrow();
        assertThat(Inputs.shown(problems)).isEmpty();
        assertThat(line.segmentMetres()).hasSize(pixels.length - 1);
        return line;
    }

    private double[] metres(Positions stage, int... pixels) {
        return line(stage, 1, "{\"mm2\": 1}", pixels).segmentMetres();
    }

    /** A chain of all pixels in some order, with dark ones among them and at its ends. */
    private static int[] chain(Random random) {
        int[] chain = new int[PIXELS + 6];
        Arrays.fill(chain, Link.DARK);
        int at = random.nextInt(3);
        for (int pixel : random.ints(0, PIXELS).distinct().limit(PIXELS).toArray()) {
            chain[at] = pixel;
            at += at < PIXELS && random.nextInt(4) == 0 ? 2 : 1;
            if (at == chain.length) {
                break;
            }
        }
        return chain;
    }

    private static double[][] places(Random random) {
        return IntStream.range(0, PIXELS)
                .mapToObj(pixel -> random.doubles(3, -5, 5).toArray())
                .toArray(double[][]::new);
    }

    /** The same garden from another corner, turned by the same angle, gives wires of the same length. */
    @RepeatedTest(20)
    void neitherMovingNorTurningTheStageChangesAWire(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        double[][] places = places(random);
        double angle = random.nextDouble();
        double[][] moved = Arrays.stream(places)
                .map(place -> new double[] {
                    Math.cos(angle) * place[0] - Math.sin(angle) * place[1] + 30,
                    Math.sin(angle) * place[0] + Math.cos(angle) * place[1] - 7,
                    place[2] + 2
                })
                .toArray(double[][]::new);
        int[] chain = chain(random);
        assertThat(metres(positions(moved), chain)).containsExactly(metres(positions(places), chain), within(1e-12));
    }

    /** A line fed from its other end has the same segments, the last one first. */
    @RepeatedTest(20)
    void theOtherWayRoundTheSegmentsAreTheSame(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        Positions stage = positions(places(random));
        int[] chain = chain(random);
        int[] back = IntStream.range(0, chain.length)
                .map(i -> chain[chain.length - 1 - i])
                .toArray();
        double[] metres = metres(stage, chain);
        double[] reversed = IntStream.range(0, metres.length)
                .mapToDouble(i -> metres[metres.length - 1 - i])
                .toArray();
        assertThat(metres(stage, back)).containsExactly(reversed, within(1e-12));
    }

    /** Dark pixels between two lit ones make no wire longer, they only cut it in pieces. */
    @Test
    void repeatersBetweenPixelsDoNotMakeTheWireLonger() {
        Positions stage = positions(new double[] {0, 0, 0}, new double[] {2, 3, 6});
        for (int dark = 0; dark < 5; dark++) {
            int[] chain = new int[dark + 2];
            Arrays.fill(chain, Link.DARK);
            chain[0] = 0;
            chain[dark + 1] = 1;
            double[] metres = metres(stage, chain);
            assertThat(metres).containsOnly(new double[] {1.1 * 7 / (dark + 1)}, within(1e-12));
            assertThat(DoubleStream.of(metres).sum()).isCloseTo(7.7, within(1e-12));
        }
    }

    /** Where a repeater hangs before the first pixel nobody can know: as far as pixels are from each other mostly. */
    @Test
    void darkPixelsAtTheEndsAreAsFarAsPixelsInTheMean() {
        Positions stage = positions(new double[] {0, 0, 0}, new double[] {1, 0, 0}, new double[] {1, 3, 0});
        assertThat(metres(stage, -1, -1, 0, -1, 1, 2, -1))
                .containsExactly(new double[] {4.4 / 3, 4.4 / 3, 0.55, 0.55, 3.3, 4.4 / 3}, within(1e-12));
    }

    /** A display in millimetres, centimetres, feet (0.3048 m exactly, 1959) or metres: as long as it is written. */
    @ParameterizedTest
    @CsvSource({"0.001, 5000, 7000", "0.01, 500, 700", "0.3048, 16.404199475, 22.965879265", "1, 5, 7"})
    void lengthsAreInTheUnitOfTheDisplay(double metresPerUnit, double pitch, double length) {
        Positions stage = positions(new double[3], new double[3]);
        PowerLine line = line(stage, metresPerUnit, "{\"awg\": 18, \"pitch\": " + pitch + "}", -1, 0, 1, -1);
        assertThat(line.measured()).isTrue();
        assertThat(line.segmentMetres()).containsExactly(new double[] {5, 5, 5}, within(1e-8));
        Lead lead = new WireReader(stage, metresPerUnit, problems)
                .lead(fields(PowerFields.LEAD, "{\"mm2\": 2.5, \"length\": " + length + "}"))
                .orElseThrow();
        assertThat(lead.metres()).isCloseTo(7, within(1e-8));
        assertThat(lead.conductor()).isEqualTo(new Conductor("2.5 mm2", 2.5));
    }

    /** One pixel has no wire to a next one; two in one place have one without length. */
    @Test
    void shortLinesHaveShortWires() {
        Positions stage = positions(new double[3], new double[3]);
        assertThat(metres(stage, 0)).isEmpty();
        assertThat(metres(stage, Link.DARK)).isEmpty();
        assertThat(metres(stage, 0, 1)).containsExactly(0);
    }

    @Test
    void asksForThePitchWhereTheMapCannotTell() {
        Fields fields = fields(PowerFields.LINE, "{\"awg\": 18}");
        WireReader reader = new WireReader(positions(new double[3]), 1, problems);
        assertThat(reader.line(fields, new int[] {-1, 0})).isEmpty();
        assertThat(reader.line(fields, new int[] {-1, -1, -1})).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "in.json:1:1: error: the wire has no \"pitch\", and its chain no two pixels whose places are"
                                + " known; say with \"pitch\" how long the wire from pixel to pixel is");
    }
}
