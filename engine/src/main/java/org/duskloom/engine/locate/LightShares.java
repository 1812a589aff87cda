package org.duskloom.engine.locate;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindCode;

/**
 * How bright lights are in the readings of a round, at some dots in the middle of lights: as shares, 0 as in the dark
 * picture, 1 as in the lit one. By these readings are compared with each other.
 */
final class LightShares {
    /** As many dots as this must agree, as a share of those that are looked at. */
    static final double MOST = 0.75;

    /** Where two readings show the same at such a share of the dots, they are two pictures of one step. */
    static final double ALIKE = 0.9;

    /** By which share of a light a pair may miss the lit picture. */
    private static final double TOLERANCE = 0.3;

    /** A light takes turns in at least this share of the pairs, even if some pictures are not what they should be. */
    private static final double TURNS = 0.7;

    private static final int MOST_DOTS = 4000;

    private final Reference reference;
    private final float[][] light;
    private final int[] dots;

    private LightShares(Readings readings, boolean pairs) {
        this.reference = readings.reference;
        this.light = readings.light;
        int[] bright =
                IntStream.range(0, reference.dots.count()).filter(this::isClear).toArray();
        int[] taking = IntStream.of(bright).filter(this::takesTurns).toArray();
        // In photos that do not belong together nothing takes turns.
        int[] clear = !pairs || 20 * taking.length < bright.length ? bright : taking;
        int stride = 1 + clear.length / MOST_DOTS;
        this.dots = IntStream.range(0, clear.length)
                .filter(i -> i % stride == 0)
                .map(i -> clear[i])
                .toArray();
    }

    /** Of readings that should be pairs: lights are told from lamps by taking turns. */
    static LightShares ofPairs(Readings readings) {
        return new LightShares(readings, true);
    }

    /** Of readings some of which are missing or too many. */
    static LightShares ofAny(Readings readings) {
        return new LightShares(readings, false);
    }

    /** In the middle of a light, but not in a lamp. */
    private boolean isClear(int dot) {
        double above = reference.lit[dot] - reference.dark[dot];
        return above > 0.4 * reference.usualPeak && !reference.nearLamp[dot];
    }

    /**
     * Whether a dot is mostly lit in just one picture of each pair, as it is in the middle of a light, not of a lamp.
     */
    private boolean takesTurns(int dot) {
        double[] sorted = IntStream.range(0, light.length)
                .mapToDouble(reading -> light[reading][dot])
                .sorted()
                .toArray();
        double half = 0.5 * (sorted[sorted.length / 4] + sorted[sorted.length * 3 / 4]);
        int turns = 0;
        for (int reading = 0; reading + 1 < light.length; reading += 2) {
            turns += light[reading][dot] > half != light[reading + 1][dot] > half ? 1 : 0;
        }
        return turns > TURNS * light.length / 2;
    }

    /** How many readings there are. */
    int readings() {
        return light.length;
    }

    /** Whether there is nothing to go by. */
    boolean isEmpty() {
        return dots.length == 0;
    }

    /** By how much a dot is brighter in a reading than in the dark, as a share of what it is when lit. */
    private double share(int reading, int dot) {
        return (light[reading][dot] - reference.dark[dot]) / (reference.lit[dot] - reference.dark[dot]);
    }

    private boolean isBurnt(int dot) {
        return reference.lit[dot] >= Plane.BURNT_LIGHT;
    }

    /** The share of the dots that are burnt out in the lit picture. */
    double burnt() {
        return ofDots(this::isBurnt);
    }

    private double ofDots(IntPredicate which) {
        return (double) IntStream.of(dots).filter(which).count() / dots.length;
    }

    /** Whether two readings give together what the lit picture shows. */
    boolean arePair(int reading, int other) {
        return MOST
                <= ofDots(dot -> {
                    double a = share(reading, dot);
                    double b = share(other, dot);
                    return isBurnt(dot) ? Math.max(a, b) > 1 - TOLERANCE : Math.abs(a + b - 1) < TOLERANCE;
                });
    }

    /** The share of the dots that are neither dark nor as bright as in the lit picture. */
    double haze(int reading) {
        return ofDots(dot -> {
            double share = share(reading, dot);
            return share > 0.25 && share < 0.75;
        });
    }

    /** The share of the dots at which two readings show the same. */
    double likeness(int reading, int other) {
        return ofDots(dot -> Math.abs(share(reading, dot) - share(other, dot)) < TOLERANCE);
    }

    /** Whether no light is lit in a reading. */
    boolean isDark(int reading) {
        return ofDots(dot -> share(reading, dot) < 0.15) > 0.97;
    }

    /** Whether all lights are lit in a reading. */
    boolean isLit(int reading) {
        return ofDots(dot -> share(reading, dot) > 1 - TOLERANCE) > 0.97;
    }

    /** Whether most lights are lit in later readings, but were so in the dark picture already. */
    boolean wereMostLitInTheDark() {
        return ofDots(dot -> 4
                                * IntStream.range(0, light.length)
                                        .filter(reading -> share(reading, dot) < -0.25)
                                        .count()
                        > light.length)
                > 0.5;
    }

    /**
     * What the dots say whose every bit is clear.
     *
     * @param order the readings, in the order of the run: the ones and the zeros of every bit; -1 twice for a bit of
     *     which there are none, which is 0 then
     */
    int[] words(FindCode code, int[] order) {
        return IntStream.of(dots)
                .filter(dot -> IntStream.range(0, code.bits())
                        .filter(bit -> order[2 * bit] >= 0)
                        .allMatch(bit -> Math.abs(share(order[2 * bit], dot) - share(order[2 * bit + 1], dot)) > 0.6))
                .map(dot -> IntStream.range(0, code.bits())
                        .filter(bit -> order[2 * bit] >= 0)
                        .filter(bit -> light[order[2 * bit]][dot] > light[order[2 * bit + 1]][dot])
                        .map(bit -> 1 << bit)
                        .sum())
                .toArray();
    }
}
