package org.duskloom.engine.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The most drops of a line: those that looking at every pixel of every frame finds, bit for bit. */
class MostDropsTest {
    /** What frames show. */
    private enum Scene {
        /** Every pixel for itself. */
        NOISE,
        /** All pixels alike, brighter and darker. */
        SWELL,
        /** A light that runs along the line again and again, on a ground that stays. */
        CHASE,
        /** Pieces of the line that are on or off, rest at 0. */
        PIECES;

        double[] amps(int frame, int pixels, SplittableRandom random) {
            double[] amps = new double[pixels];
            double swell = 0.04 * (1 + StrictMath.sin(frame / 7.0));
            int piece = 1 + random.nextInt(30);
            double level = 0;
            for (int i = 0; i < pixels; i++) {
                level = i % piece == 0 ? random.nextInt(2) * 0.05 : level;
                amps[i] = switch (this) {
                    case NOISE -> 0.08 * random.nextDouble();
                    case SWELL -> swell;
                    case CHASE -> 0.01 + (Math.floorMod(i - 3 * frame, pixels) < 12 ? 0.05 : 0);
                    case PIECES -> level;
                };
            }
            return amps;
        }
    }

    private static LineNetwork anyLine(SplittableRandom random) {
        int pixels = 1 + random.nextInt(random.nextBoolean() ? 12 : 300);
        double[] ohms = random.doubles(pixels - 1, 0.0005, 0.05)
                .map(each -> random.nextInt(10) == 0 ? 0 : each)
                .toArray();
        if (random.nextBoolean()) {
            Arrays.fill(ohms, 0.004);
        }
        List<LineNetwork.Source> sources = new ArrayList<>();
        int feeds = 1 + random.nextInt(6);
        for (int i = 0; i < feeds; i++) {
            double lead = random.nextInt(4) == 0 ? 0 : 0.01 + random.nextDouble();
            double volts = random.nextInt(3) == 0 ? 11.5 + random.nextDouble() : 12;
            sources.add(new LineNetwork.Source(random.nextInt(pixels), lead, volts));
        }
        return new LineNetwork(ohms, sources);
    }

    @ParameterizedTest
    @EnumSource
    void areThoseOfEveryPixelInEveryFrame(Scene scene) {
        SplittableRandom random = new SplittableRandom(29);
        for (int line = 0; line < 150; line++) {
            LineNetwork network = anyLine(random);
            MostDrops drops = new MostDrops(network);
            double[] most = new double[network.pixelCount()];
            long[] frames = new long[most.length];
            Arrays.fill(most, Double.NEGATIVE_INFINITY);
            for (int frame = 0; frame < 120; frame++) {
                network.solve(scene.amps(frame, most.length, random));
                drops.raise(frame);
                for (int i = 0; i < most.length; i++) {
                    frames[i] = network.drop(i) > most[i] ? frame : frames[i];
                    most[i] = Math.max(most[i], network.drop(i));
                }
            }
            assertThat(drops.most()).containsExactly(most);
            assertThat(drops.frames()).containsExactly(frames);
        }
    }

    /**
     * One pixel in the middle of a block draws more than ever, while those at both ends of the block drop less.
     */
    @Test
    void seesADropBetweenTheEndsOfABlock() {
        double[] ohms = new double[LineBlocks.MOST - 1];
        Arrays.fill(ohms, 1);
        int last = ohms.length;
        LineNetwork network =
                new LineNetwork(ohms, List.of(new LineNetwork.Source(0, 0, 12), new LineNetwork.Source(last, 0, 12)));
        MostDrops drops = new MostDrops(network);
        double[] amps = new double[last + 1];
        Arrays.fill(amps, 0.1);
        network.solve(amps);
        drops.raise(0);
        Arrays.fill(amps, 0);
        amps[last / 2] = 0.1 * (last + 1);
        network.solve(amps);
        drops.raise(1);
        assertThat(drops.frames()[last / 2]).isEqualTo(1);
        assertThat(drops.most()[last / 2]).isGreaterThan(0.1 * last * last / 8);
        assertThat(drops.frames()[0]).isZero();
    }

    /**
     * Sixty-three pixels, an ohm from each to the next, fed at both ends without a lead: an ampere at pixel j
     * drops i (62 - j) / 62 volts at pixel i before it and j (62 - i) / 62 behind it. Blocks begin with 0, 21
     * and 42. The third frame raises pixel 42 and none of the block before it; so the straight line between its
     * ends now passes above what its pixels ever had. The fourth frame reaches the most at neither end, and
     * raises pixel 32.
     */
    @Test
    void seesADropBelowTheEndsWhereTheEndOfABlockWasRaisedAlone() {
        double[] ohms = new double[3 * LineBlocks.MOST - 1];
        Arrays.fill(ohms, 1);
        LineNetwork network =
                new LineNetwork(ohms, List.of(new LineNetwork.Source(0, 0, 12), new LineNetwork.Source(62, 0, 12)));
        MostDrops drops = new MostDrops(network);
        draw(network, drops, 0, Map.of(31, 0.2));
        draw(network, drops, 1, Map.of(20, 2.0));
        draw(network, drops, 2, Map.of(51, 1.85));
        assertThat(drops.frames()[41]).isEqualTo(1);
        assertThat(drops.frames()[42]).isEqualTo(2);
        assertThat(drops.most()[32]).isCloseTo(2 * 20 * 30 / 62.0, within(1e-9));

        draw(network, drops, 3, Map.of(20, 1.93, 32, 0.02, 51, 0.11));

        assertThat(drops.frames()[21]).isEqualTo(1);
        assertThat(drops.frames()[42]).isEqualTo(2);
        assertThat(drops.frames()[32]).isEqualTo(3);
        assertThat(drops.most()[32]).isCloseTo((1.93 * 20 * 30 + 0.02 * 32 * 30 + 0.11 * 32 * 11) / 62, within(1e-9));
    }

    private static void draw(LineNetwork network, MostDrops drops, long frame, Map<Integer, Double> ampsByPixel) {
        double[] amps = new double[network.pixelCount()];
        ampsByPixel.forEach((pixel, current) -> amps[pixel] = current);
        network.solve(amps);
        drops.raise(frame);
    }

    /**
     * Most frames cost a comparison for each block: a frame that is darker everywhere than one before is not looked
     * into. Whoever looked would find what the pixels are made to draw behind the network's back, and raise them all.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.25, 0.5})
    void aDarkerFrameIsNotLookedInto(double share) {
        LineNetwork network = longLine();
        MostDrops drops = new MostDrops(network);
        double[] amps = new double[network.pixelCount()];
        Arrays.fill(amps, 0.06);
        network.solve(amps);
        drops.raise(0);
        double[] most = drops.most().clone();
        Arrays.fill(amps, share * 0.06);
        network.solve(amps);
        Arrays.fill(amps, -1000);
        drops.raise(1);
        assertThat(drops.most()).containsExactly(most);
        assertThat(drops.frames()).containsOnly(0);
    }

    /** A light that runs along the line once more is looked for where it is: the rest of the line is at rest. */
    @ParameterizedTest
    @ValueSource(ints = {0, 100, 299, 450, 599})
    void aChaseIsLookedForWhereItIs(int frame) {
        LineNetwork network = longLine();
        MostDrops drops = new MostDrops(network);
        int pixels = network.pixelCount();
        for (int before = 0; before < pixels; before++) {
            network.solve(Scene.CHASE.amps(before, pixels, new SplittableRandom(1)));
            drops.raise(before);
        }
        double[] most = drops.most().clone();
        double[] amps = Scene.CHASE.amps(frame, pixels, new SplittableRandom(1));
        network.solve(amps);
        Arrays.fill(amps, -1000);
        drops.raise(pixels);
        long lookedInto = IntStream.range(0, pixels)
                .filter(pixel -> drops.most()[pixel] != most[pixel])
                .count();
        assertThat(lookedInto).isLessThan(pixels / 4);
    }

    /** Six hundred pixels, fed at both ends and in the middle. */
    private static LineNetwork longLine() {
        double[] ohms = new double[599];
        Arrays.fill(ohms, 0.004);
        return new LineNetwork(
                ohms,
                List.of(
                        new LineNetwork.Source(0, 0.01, 12),
                        new LineNetwork.Source(300, 0.01, 12),
                        new LineNetwork.Source(599, 0.01, 12)));
    }
}
